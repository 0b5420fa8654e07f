package io.github.readfall.export.phone;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.SvgPath;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.draw.GalleyArtist;
import io.github.readfall.draw.render.Reaches;
import io.github.readfall.export.html.Element;
import io.github.readfall.export.html.Node;
import io.github.readfall.export.transcript.TranscriptHtml;
import io.github.readfall.strip.PanelBox;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The part of the page in one language: the strip, its findings, and the transcript.
 *
 * @param strip to be shown
 * @param ground shared by all languages
 * @param symbols collects what is drawn
 */
record EditionHtml(PhoneStrip strip, PhoneStripBase ground, Symbols symbols) {

  /** The whole part. */
  Element html() {
    String id = id();
    Element heading =
        TranscriptHtml.in(strip.language(), Element.of("h2", name()).with("id", id + "-name"));
    return Element.of("section")
        .as("edition")
        .with("id", id)
        .with("aria-labelledby", id + "-name")
        .holding(heading, link(transcriptId(), "phone.toTranscript"), shown())
        .holding(unplaced())
        .holding(transcript());
  }

  private String id() {
    return id(strip.language());
  }

  /** The id of a language's part. */
  static String id(String language) {
    return "in-" + language;
  }

  private String transcriptId() {
    return id() + "-transcript";
  }

  private String name() {
    return TranscriptHtml.languageName(strip.language());
  }

  private static Element link(String to, String key) {
    return Element.of("p")
        .as("way")
        .holding(Element.of("a", Wording.of(key)).with("href", "#" + to));
  }

  private Element shown() {
    String label = Wording.of("phone.strip", name(), strip.galley().panels().size());
    Element picture =
        Element.of("div")
            .as("picture")
            .with("role", "img")
            .with("aria-label", label)
            .holding(pieces());
    List<Spot> spots = Spot.of(strip.galley(), strip.findings());
    FindingHtml marks =
        new FindingHtml(strip.language(), strip.galley().widthPx(), ground.heightPx());
    return Element.of("div")
        .as("strip")
        .holding(picture)
        .holding(numbers())
        .holding(
            IntStream.range(0, spots.size())
                .mapToObj(i -> marks.marked(i + 1, spots.get(i)))
                .toList());
  }

  private List<Element> pieces() {
    Reaches lettering = Reaches.of(GalleyArtist.lettering(strip.galley()), ground.heightPx());
    List<Element> pieces = new ArrayList<>();
    for (int i = 0; i < ground.pieces().size(); i++) {
      StripPiece piece = ground.pieces().get(i);
      List<Element> drawn = new ArrayList<>(borders(piece));
      drawn.addAll(SvgLettering.of(lettering.between(piece.topPx(), piece.bottomPx()), symbols));
      pieces.add(ground.piece(i, drawn));
    }
    return pieces;
  }

  /** The borders of panels, if nothing is drawn yet. */
  private List<Element> borders(StripPiece piece) {
    return strip.galley().panels().stream()
        .map(PanelBox::box)
        .filter(box -> box.y() <= piece.bottomPx() && box.bottom() >= piece.topPx())
        .filter(box -> box.bottom() > ground.artHeightPx())
        .map(EditionHtml::border)
        .toList();
  }

  private static Element border(Box box) {
    return Element.of("rect")
        .with("x", SvgPath.number(box.x()))
        .with("y", SvgPath.number(box.y()))
        .with("width", SvgPath.number(box.width()))
        .with("height", SvgPath.number(box.height()));
  }

  /** A number in each panel's lower right corner, to refer to it. */
  private List<Element> numbers() {
    return strip.galley().panels().stream()
        .map(
            panel ->
                Element.of("span", Integer.toString(panel.panel()))
                    .as("found number")
                    .with("aria-hidden", "true")
                    .with("style", corner(panel.box())))
        .toList();
  }

  private String corner(Box box) {
    return "right:"
        + Percent.of(1 - box.right() / ground.widthPx())
        + ";bottom:"
        + Percent.of(1 - box.bottom() / ground.heightPx());
  }

  private List<Element> unplaced() {
    List<Finding> findings =
        strip.findings().stream()
            .filter(finding -> Spot.place(strip.galley(), finding).isEmpty())
            .toList();
    if (findings.isEmpty()) {
      return List.of();
    }
    Element list = Element.of("ul").holding(findings.stream().map(FindingHtml::listed).toList());
    return List.of(
        Element.of("div")
            .as("found unplaced")
            .holding(Element.of("h3", Wording.of("phone.unplaced")), list));
  }

  private Element transcript() {
    List<Node> nodes = TranscriptHtml.of(strip.transcript(), 4);
    return Element.of("div")
        .as("transcript")
        .holding(Element.of("h3", Wording.of("transcript.about")).with("id", transcriptId()))
        .holding(nodes)
        .holding(link(id(), "phone.toStrip"));
  }
}
