package io.github.readfall.draw;

import io.github.readfall.art.panels.ArtSketch;
import io.github.readfall.art.panels.FoundPanel;
import io.github.readfall.art.panels.FoundPanels;
import io.github.readfall.art.panels.MatchedPanel;
import io.github.readfall.art.panels.MatchedPanels;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.lettering.typeset.Labels;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Draws the panels found in a strip's art over the art, small and pale: each with its number and
 * certainty, and boxes without a panel of the script without a number. Measures and colours are
 * house defaults, no source.
 */
public final class PanelSheet {

  private static final Colour PAPER = Colour.WHITE;

  /** Edges are drawn so wide, in units. */
  private static final double LINE = 0.4;

  /** Neighbouring cells of the art that differ less are drawn as one, in levels. */
  private static final int ALIKE = 10;

  private final FoundPanels found;
  private final Pen pen;
  private final List<Mark> marks = new ArrayList<>();

  private PanelSheet(FoundPanels found, Labels labels) {
    this.found = found;
    double unitPx = found.widthPx() / 64.0;
    this.pen = new Pen(unitPx, new MarginNote(labels, 2 * unitPx));
  }

  /**
   * The sheet of a strip's art.
   *
   * @param title of the episode
   * @param language of the title, BCP 47
   */
  public static Drawing of(
      String title, String language, FoundPanels found, MatchedPanels matched, Labels labels) {
    PanelSheet sheet = new PanelSheet(found, labels);
    sheet.art(found.sketch());
    matched.extra().forEach(extra -> sheet.panel(extra, "no panel", Pen.WARNING));
    for (MatchedPanel panel : matched.panels()) {
      sheet.panel(panel.found(), Integer.toString(panel.number()), Pen.PATH);
    }
    return new Drawing(title, language, found.widthPx(), found.heightPx(), PAPER, sheet.marks);
  }

  /** Each row of cells as runs of one colour. */
  private void art(ArtSketch sketch) {
    for (int row = 0; row < sketch.rows(); row++) {
      int from = 0;
      for (int column = 1; column <= sketch.columns(); column++) {
        if (column == sketch.columns() || !isAlike(sketch, row, from, column)) {
          cells(sketch, row, from, column);
          from = column;
        }
      }
    }
  }

  private static boolean isAlike(ArtSketch sketch, int row, int one, int other) {
    int a = sketch.colour(one, row);
    int b = sketch.colour(other, row);
    int most = 0;
    for (int shift = 0; shift <= 16; shift += 8) {
      most = Math.max(most, Math.abs(((a >> shift) & 0xff) - ((b >> shift) & 0xff)));
    }
    return most <= ALIKE;
  }

  private void cells(ArtSketch sketch, int row, int from, int end) {
    double px = sketch.cellPx();
    double bottom = Math.min(found.heightPx(), (row + 1) * px + 1);
    double right = Math.min(found.widthPx(), end * px + 1);
    Box box = Box.ofEdges(from * px, row * px, right, bottom);
    marks.add(new Mark.Fill(Shapes.box(box), pale(sketch.colour(from, row))));
  }

  /** Half way to white. */
  private static Colour pale(int colour) {
    return new Colour(0x7f7f7f + ((colour >> 1) & 0x7f7f7f));
  }

  private void panel(FoundPanel panel, String name, Colour colour) {
    double unit = pen.unitPx();
    Box box = panel.box();
    List<Double> dashes = colour.equals(Pen.PATH) ? List.of() : List.of(unit, unit / 2);
    marks.add(new Mark.Line(Shapes.box(box), Colour.WHITE, 2 * LINE * unit, List.of()));
    marks.add(new Mark.Line(Shapes.box(box), colour, LINE * unit, dashes));
    String text = String.format(Locale.ROOT, "%s  %.0f %%", name, 100 * panel.certainty());
    double width = pen.small().widthPx(text, true) + unit;
    Box plate = new Box(box.x() + unit, box.y() + unit, width, 2.6 * unit);
    marks.add(new Mark.Fill(Shapes.rounded(plate, unit / 3), Colour.WHITE));
    XY at = new XY(plate.x() + unit / 2, plate.bottom() - 0.7 * unit);
    marks.addAll(pen.small().line(text, at, true, colour));
  }
}
