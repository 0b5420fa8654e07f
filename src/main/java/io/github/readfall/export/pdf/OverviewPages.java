package io.github.readfall.export.pdf;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.draw.Mark;
import io.github.readfall.draw.Shapes;
import io.github.readfall.lettering.typeset.Labels;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;

/** The whole strip small, page beside page, without its letters. */
final class OverviewPages {

  private static final Colour EDGE = new Colour(0xb9b5ad);
  private static final double WIDEST = 40;
  private static final double NARROWEST = 4;
  private static final double GAP = 7;
  private static final double FOOT = 13;
  private static final double NUMBER = 6;
  private static final double STEP = 0.97;

  private final double stripPx;
  private final double segmentPx;
  private final ProofScene scene;
  private final Labels labels;
  private final List<Piece> pieces = new ArrayList<>();

  private record Piece(Segment segment, List<PageArt> art, int page, List<String> balloons) {}

  OverviewPages(double stripPx, double segmentPx, ProofScene scene, Labels labels) {
    this.stripPx = stripPx;
    this.segmentPx = segmentPx;
    this.scene = scene;
    this.labels = labels;
  }

  /** A further segment. */
  void add(Segment segment, List<PageArt> art, int page, List<String> balloons) {
    pieces.add(new Piece(segment, List.copyOf(art), page, List.copyOf(balloons)));
  }

  /** Draws it below a height of the page, as large as there is room. */
  void draw(Sheet sheet, PDStructureElement figure, double topPt) {
    figure.setAlternateDescription(
        pieces.isEmpty()
            ? "Nothing has a place on the strip yet."
            : "The strip as drawn on the pages that follow, "
                + pieces.get(0).page()
                + " to "
                + pieces.get(pieces.size() - 1).page()
                + ".");
    double width = widthPt(Paper.BOTTOM - topPt);
    sheet.tagged(figure, () -> row(sheet, topPt, width));
    for (int i = 0; i < pieces.size(); i++) {
      number(sheet, pieces.get(i), place(i, topPt, width), width);
    }
  }

  private void row(Sheet sheet, double topPt, double width) {
    for (int i = 0; i < pieces.size(); i++) {
      draw(sheet, pieces.get(i), place(i, topPt, width), width / stripPx);
    }
  }

  private int across(double width) {
    return (int) Math.max(1, Math.floor((Paper.WIDTH - 2 * Paper.SIDE + GAP) / (width + GAP)));
  }

  private double highPt(double width) {
    return segmentPx * width / stripPx + FOOT;
  }

  private double widthPt(double roomPt) {
    double width = WIDEST;
    while (width > NARROWEST
        && Math.ceil(pieces.size() / (double) across(width)) * highPt(width) > roomPt) {
      width *= STEP;
    }
    return width;
  }

  private XY place(int index, double topPt, double width) {
    int column = index % across(width);
    int row = index / across(width);
    return new XY(Paper.SIDE + column * (width + GAP), topPt + row * highPt(width));
  }

  private void draw(Sheet sheet, Piece piece, XY at, double scale) {
    Box box = piece.segment().box(stripPx);
    double up = -box.y();
    sheet.at(
        at,
        scale,
        () -> {
          Box place = box.movedBy(0, up);
          sheet.within(
              place,
              () -> {
                sheet.painter().fill(new Mark.Fill(Shapes.box(place), Colour.WHITE));
                scene
                    .ground()
                    .between(box.y(), box.bottom())
                    .forEach(mark -> paint(sheet, mark, up));
                piece.art().forEach(art -> sheet.picture(art.picture(), art.box().movedBy(0, up)));
                piece.balloons().stream()
                    .flatMap(id -> scene.lettering().getOrDefault(id, List.of()).stream())
                    .forEach(mark -> paint(sheet, mark, up));
              });
          sheet.painter().line(new Mark.Line(Shapes.box(place), EDGE, 0.5 / scale, List.of()));
        });
  }

  /** Paints a mark without letters, which nobody could read. */
  private static void paint(Sheet sheet, Mark mark, double up) {
    if (mark instanceof Mark.Group group) {
      group.marks().forEach(part -> paint(sheet, part, up));
    } else if (!(mark instanceof Mark.Glyphs)) {
      mark.movedBy(0, up).paintOn(sheet.painter());
    }
  }

  private void number(Sheet sheet, Piece piece, XY at, double width) {
    String text = Integer.toString(piece.page());
    var line = labels.line(text, NUMBER, false);
    double below = at.y() + piece.segment().heightPx() * width / stripPx + NUMBER + 1.5;
    sheet.decoration(() -> sheet.painter().text(line, new XY(at.x(), below), TextStyle.QUIET));
  }
}
