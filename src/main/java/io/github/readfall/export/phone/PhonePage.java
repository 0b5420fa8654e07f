package io.github.readfall.export.phone;

import io.github.readfall.base.viewing.Phone;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.export.html.Element;
import io.github.readfall.export.html.HtmlPage;
import io.github.readfall.export.html.Node;
import io.github.readfall.export.html.StyleSheet;
import io.github.readfall.export.html.Text;
import io.github.readfall.export.transcript.TranscriptHtml;
import io.github.readfall.export.transcript.TranscriptPage;
import java.util.ArrayList;
import java.util.List;

/**
 * The page round the strips: its head, and the menu of languages.
 *
 * @param strips the first is shown at first; at least one
 * @param ground that they share
 */
record PhonePage(List<PhoneStrip> strips, PhoneStripBase ground) {

  PhonePage {
    strips = List.copyOf(strips);
  }

  /** The head but for the art. */
  Element head() {
    return HtmlPage.head(
        title(),
        List.of(
            TranscriptPage.look(),
            HtmlPage.sheet(PhonePage.class, "phone.css"),
            new StyleSheet(sizes() + choices())));
  }

  private String title() {
    return Wording.of("phone.page", strips.get(0).transcript().name());
  }

  /** The widths: that of the widest phone of the series if the screen is wider than any phone. */
  private String sizes() {
    double phone =
        strips.get(0).galley().style().phones().stream()
            .mapToDouble(Phone::widthDp)
            .max()
            .orElse(Phone.SMALL.widthDp());
    return ":root { --own: "
        + Math.round(ground.widthPx())
        + "px; --phone: "
        + Math.round(phone)
        + "px }\n";
  }

  /** Each language hides the others; a browser that does not understand this shows them all. */
  private String choices() {
    StringBuilder rules = new StringBuilder();
    for (PhoneStrip strip : strips) {
      String chosen = "body:has(#show-" + strip.language() + ":checked) ";
      rules
          .append(chosen)
          .append(".edition:not(#")
          .append(EditionHtml.id(strip.language()))
          .append("), ")
          .append(chosen)
          .append(".chosen:not(.is-")
          .append(strip.language())
          .append(") { display: none }\n");
    }
    return rules.toString();
  }

  /** The part above the strips. */
  List<Node> top() {
    Element title =
        TranscriptHtml.in(
            strips.get(0).transcript().writtenIn(),
            Element.of("span", strips.get(0).transcript().name()));
    Element heading = Element.of("h1").holding(title, new Text(": " + Wording.of("phone.proof")));
    List<Node> words = new ArrayList<>(List.of(heading));
    words.add(Element.of("p", Wording.of("phone.how")));
    if (ground.artHeightPx() == 0) {
      words.add(Element.of("p", Wording.of("phone.noArt")));
    }
    words.add(Element.of("p", Wording.of("phone.caution")));
    return List.of(Element.of("header").holding(words), menu());
  }

  private Element menu() {
    Element summary =
        Element.of("summary")
            .holding(Element.of("span", Wording.of("phone.menu") + ": ").as("unseen"))
            .holding(strips.stream().map(PhonePage::chosen).toList());
    Element languages =
        Element.of("fieldset")
            .holding(Element.of("legend", Wording.of("phone.language")))
            .holding(strips.stream().map(this::choice).toList());
    Element findings =
        Element.of("label")
            .holding(
                Element.of("input").with("type", "checkbox").with("id", "findings").with("checked"),
                new Text(" " + Wording.of("phone.findings")));
    return Element.of("details")
        .as("menu")
        .holding(summary, Element.of("div").as("sheet").holding(languages, findings));
  }

  private static Element chosen(PhoneStrip strip) {
    return Element.of("span")
        .as("chosen is-" + strip.language())
        .holding(TranscriptHtml.named(strip.language()));
  }

  private Element choice(PhoneStrip strip) {
    Element input =
        Element.of("input")
            .with("type", "radio")
            .with("name", "language")
            .with("id", "show-" + strip.language());
    boolean isFirst = strip.equals(strips.get(0));
    return Element.of("label")
        .holding(
            isFirst ? input.with("checked") : input,
            new Text(" "),
            TranscriptHtml.named(strip.language()));
  }
}
