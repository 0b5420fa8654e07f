package io.github.readfall.draw;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.lettering.typeset.Labels;
import io.github.readfall.strip.galley.Galley;
import java.util.ArrayList;
import java.util.List;

/**
 * Draws everything round the lettering of a strip in one style. Measures and colours are house
 * defaults, no source.
 *
 * @param unitPx unit of all measures, mostly a 64th of the strip's width
 * @param small writes numbers and names
 */
record Pen(double unitPx, MarginNote small) {

  static final Colour PANEL = new Colour(0xd9dcdb);
  static final Colour BORDER = new Colour(0x8b9190);
  static final Colour KEPT = new Colour(0xbfc7c5);
  static final Colour INK = new Colour(0x3b3a38);
  static final Colour QUIET = new Colour(0x6b6862);
  static final Colour PATH = new Colour(0x2e7d7a);
  static final Colour TAIL = new Colour(0x6a4c93);
  static final Colour ERROR = new Colour(0xa3234b);
  static final Colour WARNING = new Colour(0x9a5b00);
  static final Colour REMARK = new Colour(0x4d5f80);

  /** Of the strip's width. */
  static final double UNITS = 64;

  /** Thin lines in a unit. */
  static final double LINES = 8;

  private static final double SMALL = 1.1;
  private static final double PAD = 0.35;

  static Pen of(Galley galley, Labels labels) {
    return of(galley, labels, 1);
  }

  /** A pen that draws everything larger by a factor. */
  static Pen of(Galley galley, Labels labels, double larger) {
    double unitPx = larger * galley.widthPx() / UNITS;
    return new Pen(unitPx, new MarginNote(labels, SMALL * unitPx));
  }

  /** A thin straight line. */
  Mark rule(XY from, XY to, Colour colour, List<Double> dashes) {
    return new Mark.Line(Shapes.line(from, to), colour, unitPx / LINES, dashes);
  }

  /** The size of a note on a plate, its top left corner at the origin. */
  Box plate(String text) {
    double width = small.widthPx(text, true) + 2 * PAD * unitPx;
    return new Box(0, 0, width, (SMALL + 2 * PAD) * unitPx);
  }

  /** A note on a pale plate, so that it can be read over any picture. */
  List<Mark> onPlate(String text, Box place, Colour colour) {
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Fill(Shapes.rounded(place, PAD * unitPx), Colour.WHITE));
    XY at = new XY(place.x() + PAD * unitPx, place.bottom() - 1.75 * PAD * unitPx);
    marks.addAll(small.line(text, at, true, colour));
    return marks;
  }
}
