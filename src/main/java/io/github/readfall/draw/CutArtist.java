package io.github.readfall.draw;

import io.github.readfall.base.geom.SvgPath;
import io.github.readfall.base.geom.XY;
import java.util.List;

/** Draws the cuts of a strip. */
record CutArtist(Pen pen, double widthPx) {

  static final String PAGE = "page ends";
  static final String SLICE = "slice ends";

  /** The end of a canvas page: a line right across. */
  Mark page(double y) {
    double unit = pen.unitPx();
    return pen.rule(
        new XY(0, y), new XY(widthPx, y), Pen.INK, List.of(unit, unit / 2, unit / 6, unit / 2));
  }

  /** The end of a slice: a tick on either side. */
  List<Mark> slice(double y) {
    double tick = 1.5 * pen.unitPx();
    return List.of(
        pen.rule(new XY(0, y), new XY(tick, y), Pen.INK, List.of()),
        pen.rule(new XY(widthPx - tick, y), new XY(widthPx, y), Pen.INK, List.of()));
  }

  static String height(double y) {
    return SvgPath.number(Math.rint(y));
  }
}
