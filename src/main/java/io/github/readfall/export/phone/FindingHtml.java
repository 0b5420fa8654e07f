package io.github.readfall.export.phone;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.export.html.Element;
import io.github.readfall.export.html.Node;
import io.github.readfall.export.html.Text;
import java.util.ArrayList;
import java.util.List;

/**
 * The findings, as marks over the strip that open without a script.
 *
 * @param language of the strip; only one of its marks is open at a time
 * @param widthPx of the strip
 * @param heightPx of the strip
 */
record FindingHtml(String language, double widthPx, double heightPx) {

  /** A place that is taller than this share of the strip's width would push its words away. */
  private static final double TALL = 0.6;

  private static final double GAP_CSS_PX = 8;

  /** A mark, the frame round the place, and the words about it. */
  Element marked(int number, Spot spot) {
    Finding finding = spot.finding();
    double half = Spot.MARK_CSS_PX / 2.0;
    String left = Percent.of(spot.mark().x() / widthPx);
    String top = Percent.of(spot.mark().y() / heightPx);
    String place =
        "left:calc(" + left + " - " + half + "px);top:calc(" + top + " - " + half + "px)";
    Element summary =
        Element.of("summary")
            .with("style", place)
            .holding(
                unseen(severity(finding) + " "),
                new Text(Integer.toString(number)),
                unseen(where(finding)));
    Element said =
        Element.of("div").as("told").with("style", below(spot)).holding(sentences(finding));
    return Element.of("details")
        .as("found " + finding.severity().word())
        .with("name", "found-" + language)
        .holding(summary, frame(spot.place()), said);
  }

  /** The place of the words: below the place, or below the mark if the place is tall. */
  private String below(Spot spot) {
    boolean isTall = spot.place().height() > TALL * widthPx;
    double markPx = Spot.MARK_CSS_PX / 2.0;
    double fromPx = isTall ? spot.mark().y() : Math.max(spot.place().bottom(), spot.mark().y());
    boolean isByMark = fromPx == spot.mark().y();
    return "top:calc("
        + Percent.of(fromPx / heightPx)
        + " + "
        + (isByMark ? markPx + GAP_CSS_PX : GAP_CSS_PX)
        + "px)";
  }

  private Element frame(Box place) {
    String style =
        "left:"
            + Percent.of(place.x() / widthPx)
            + ";top:"
            + Percent.of(place.y() / heightPx)
            + ";width:"
            + Percent.of(place.width() / widthPx)
            + ";height:"
            + Percent.of(place.height() / heightPx);
    return Element.of("span").as("frame").with("style", style);
  }

  /** An entry in the list of findings without a place. */
  static Element listed(Finding finding) {
    return Element.of("li").as(finding.severity().word()).holding(sentences(finding));
  }

  private static List<Node> sentences(Finding finding) {
    List<Node> nodes = new ArrayList<>();
    nodes.add(
        Element.of("p")
            .holding(Element.of("strong", severity(finding) + ": "), new Text(finding.message())));
    if (!finding.advice().isEmpty()) {
      nodes.add(Element.of("p", finding.advice()));
    }
    finding.reason().ifPresent(why -> nodes.add(Element.of("p", Wording.of("phone.ignored", why))));
    String measured =
        finding
            .measurement()
            .map(m -> " · " + Wording.of("why.measured", m.figure(), m.limitFigure()))
            .orElse("");
    nodes.add(Element.of("p", finding.rule() + measured).as("rule"));
    return nodes;
  }

  private static String severity(Finding finding) {
    return Wording.of("phone.severity." + finding.severity().word());
  }

  private static String where(Finding finding) {
    return finding.where().panel().isPresent()
        ? ", " + Wording.of("findings.panel", finding.where().panel().getAsInt())
        : "";
  }

  private static Element unseen(String words) {
    return Element.of("span", words).as("unseen");
  }
}
