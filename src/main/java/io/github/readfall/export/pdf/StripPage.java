package io.github.readfall.export.pdf;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.draw.Mark;
import io.github.readfall.draw.Shapes;
import io.github.readfall.strip.PanelBox;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Draws a segment of the strip on its page. */
final class StripPage {

  private static final Colour PANEL = new Colour(0xd9dcdb);

  private static final Colour EDGE = new Colour(0xdcd8d0);
  private static final double EDGE_PT = 0.6;

  /** Distance by which notes on the strip may leave its segment, in points. */
  private static final double SLACK = 6;

  private final ProofStrip strip;
  private final ProofScene scene;
  private final Paper paper;
  private final Segment segment;
  private final List<PageArt> art;
  private final Sheet sheet;

  StripPage(
      ProofStrip strip,
      ProofScene scene,
      Paper paper,
      Segment segment,
      List<PageArt> art,
      Sheet sheet) {
    this.strip = strip;
    this.scene = scene;
    this.paper = paper;
    this.segment = segment;
    this.art = List.copyOf(art);
    this.sheet = sheet;
  }

  /** The strip without its words. */
  void ground() {
    Box whole = segment.box(strip.galley().widthPx());
    sheet.decoration(
        () ->
            onStrip(
                whole,
                () -> {
                  sheet.painter().fill(new Mark.Fill(moved(whole), Colour.WHITE));
                  paint(scene.ground().between(segment.topPx(), segment.bottomPx()));
                  art();
                }));
    sheet.decoration(
        () -> onStrip(whole.grownBy(EDGE_PT / paper.ptPerPx()), () -> edge(moved(whole))));
  }

  private void edge(Path outline) {
    sheet.painter().line(new Mark.Line(outline, EDGE, EDGE_PT / paper.ptPerPx(), List.of()));
  }

  /** Draws the picture of a panel once more, as a figure. */
  void figure(PanelPiece piece) {
    Optional<Box> box =
        strip.galley().panel(piece.part().panel().number()).map(PanelBox::box).map(this::shown);
    box.ifPresent(
        place ->
            sheet.tagged(
                piece.figure(),
                () ->
                    onStrip(
                        place,
                        () -> {
                          if (art.isEmpty()) {
                            sheet.painter().fill(new Mark.Fill(moved(place), PANEL));
                          }
                          art();
                        })));
  }

  /** The part of a box on this page. */
  private Box shown(Box box) {
    double top = Math.min(Math.max(box.y(), segment.topPx()), segment.bottomPx());
    double bottom = Math.max(top, Math.min(box.bottom(), segment.bottomPx()));
    return Box.ofEdges(box.x(), top, box.right(), bottom);
  }

  /** Draws what is over pictures and under words. */
  void behind() {
    sheet.decoration(
        () ->
            onStrip(
                segment.box(strip.galley().widthPx()),
                () -> paint(scene.behind().between(segment.topPx(), segment.bottomPx()))));
  }

  /** Draws a balloon, if the cue has one. */
  void balloon(CuePiece piece) {
    List<Mark> marks = scene.lettering().getOrDefault(piece.cue().id(), List.of());
    if (!marks.isEmpty()) {
      sheet.tagged(
          piece.element(),
          () -> onStrip(segment.box(strip.galley().widthPx()), () -> paint(marks)));
    }
  }

  /** Draws the parts of balloons of other pages that reach into this one: too tall for any page. */
  void strays(List<PanelPiece> pieces) {
    Set<String> own =
        pieces.stream()
            .flatMap(piece -> piece.cues().stream())
            .map(piece -> piece.cue().id())
            .collect(Collectors.toSet());
    Box shown = segment.box(strip.galley().widthPx());
    strip.galley().balloons().stream()
        .filter(balloon -> !own.contains(balloon.id()))
        .filter(balloon -> balloon.reach().bottom() > segment.topPx())
        .filter(balloon -> balloon.reach().y() < segment.bottomPx())
        .map(balloon -> scene.lettering().getOrDefault(balloon.id(), List.of()))
        .forEach(marks -> sheet.decoration(() -> onStrip(shown, () -> paint(marks))));
  }

  /** Draws what is over words. */
  void over() {
    Box around = segment.box(strip.galley().widthPx()).grownBy(SLACK / paper.ptPerPx());
    sheet.decoration(
        () ->
            onStrip(
                around, () -> paint(scene.over().between(segment.topPx(), segment.bottomPx()))));
  }

  private void onStrip(Box clip, Runnable drawing) {
    sheet.at(
        paper.origin(),
        paper.ptPerPx(),
        () -> sheet.within(clip.movedBy(0, -segment.topPx()), drawing));
  }

  private void art() {
    for (PageArt piece : art) {
      sheet.picture(piece.picture(), piece.box().movedBy(0, -segment.topPx()));
    }
  }

  private void paint(List<Mark> marks) {
    marks.forEach(mark -> mark.movedBy(0, -segment.topPx()).paintOn(sheet.painter()));
  }

  private Path moved(Box box) {
    return Shapes.box(box.movedBy(0, -segment.topPx()));
  }

  /** The upper right corner of a box on the page, on the strip at least. */
  XY corner(Box box) {
    Box place = paper.onPage(box, segment);
    double right = Paper.SIDE + paper.stripPt();
    double y = Math.min(Math.max(place.y(), Paper.TOP), Paper.BOTTOM);
    return new XY(Math.min(Math.max(place.right(), Paper.SIDE), right), y);
  }
}
