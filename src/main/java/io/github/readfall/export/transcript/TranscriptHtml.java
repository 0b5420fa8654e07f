package io.github.readfall.export.transcript;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.export.html.Element;
import io.github.readfall.export.html.Node;
import io.github.readfall.export.html.Text;
import io.github.readfall.script.Emphasis;
import io.github.readfall.type.text.Languages;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A transcript as a part of a page, which goes under any heading. */
public final class TranscriptHtml {

  private final Transcript transcript;

  private TranscriptHtml(Transcript transcript) {
    this.transcript = transcript;
  }

  /**
   * Its scenes and panels, each with a heading.
   *
   * @param level of the topmost heading, 2 to 5
   */
  public static List<Node> of(Transcript transcript, int level) {
    TranscriptHtml html = new TranscriptHtml(transcript);
    List<Node> nodes = new ArrayList<>();
    transcript.asides().forEach(aside -> nodes.add(Element.of("p", aside).as("aside")));
    transcript.scenes().forEach(scene -> nodes.addAll(html.scene(scene, level)));
    return nodes;
  }

  /** The language's name for itself; its tag if it has none. */
  public static String languageName(String tag) {
    Locale locale = Locale.forLanguageTag(tag);
    String name = locale.getDisplayName(locale);
    return name.isBlank() ? tag : name;
  }

  /** The name of a language, in that language. */
  public static Element named(String tag) {
    return in(tag, Element.of("span", languageName(tag)));
  }

  /** An element whose words are in a language. */
  public static Element in(String language, Element element) {
    return element.with("lang", language).with("dir", Languages.of(language).direction());
  }

  private List<Node> scene(TranscribedScene scene, int level) {
    boolean isNamed = scene.number().isPresent();
    List<Node> nodes = new ArrayList<>();
    if (isNamed) {
      Element heading =
          Element.of("h" + level, Wording.of("transcript.scene", scene.number().getAsInt()))
              .as("scene");
      nodes.add(scene.place().isEmpty() ? heading : heading.holding(joined(": ", scene.place())));
    }
    for (TranscribedPanel panel : scene.panels()) {
      nodes.addAll(panel(panel, isNamed ? level + 1 : level));
    }
    return isNamed ? List.of(Element.of("section").holding(nodes)) : nodes;
  }

  private List<Node> panel(TranscribedPanel panel, int level) {
    List<Node> nodes = new ArrayList<>();
    String number = Wording.of("transcript.panel", panel.number());
    Element heading = Element.of("h" + level, number).as("panel");
    nodes.add(panel.label().isEmpty() ? heading : heading.holding(joined(" ", panel.label())));
    List<Node> seen = seen(panel);
    if (!seen.isEmpty()) {
      nodes.add(Element.of("p").as("seen").holding(seen));
    }
    if (!panel.drawn().isEmpty()) {
      nodes.add(in(transcript.writtenIn(), Element.of("p", panel.drawn()).as("drawn")));
    }
    panel.lines().forEach(line -> nodes.addAll(line(line)));
    return nodes;
  }

  private List<Node> seen(TranscribedPanel panel) {
    List<Node> seen = new ArrayList<>();
    if (!panel.shot().isEmpty()) {
      seen.add(new Text(String.join(", ", panel.shot())));
    }
    if (!panel.shotNote().isEmpty()) {
      seen.addAll(joined(seen.isEmpty() ? "" : ", ", panel.shotNote()));
    }
    return seen;
  }

  /** Words of the script, in the script's language, after something else. */
  private List<Node> joined(String before, String words) {
    return List.of(new Text(before), in(transcript.writtenIn(), Element.of("span", words)));
  }

  /** Paragraphs, as the HTML Standard advises for conversations (section 4.4.9, dl: note). */
  private static List<Node> line(TranscribedLine line) {
    String how = line.how().isEmpty() ? "" : " (" + String.join(", ", line.how()) + ")";
    Element who =
        Element.of("p").as("who").holding(Element.of("b", line.who()), new Text(how + ":"));
    Element said = in(line.language(), Element.of("p").as("said"));
    return List.of(who, said.holding(line.words().stream().map(TranscriptHtml::words).toList()));
  }

  private static Node words(Words words) {
    return words
        .emphasis()
        .map(emphasis -> (Node) Element.of(tag(emphasis), words.text()))
        .orElse(new Text(words.text()));
  }

  private static String tag(Emphasis emphasis) {
    return emphasis == Emphasis.SLANTED ? "i" : "em";
  }
}
