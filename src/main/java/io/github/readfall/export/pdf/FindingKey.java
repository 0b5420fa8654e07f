package io.github.readfall.export.pdf;

import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.draw.Mark;
import io.github.readfall.draw.Shapes;
import io.github.readfall.type.text.TextLine;
import java.util.Optional;

/**
 * A letter or number on a disc: the same at a place on the strip and beside the words about it.
 *
 * @param text on the disc, set; empty for no key
 * @param colour of the disc
 */
record FindingKey(Optional<TextLine> text, Colour colour) {

  static final FindingKey NONE = new FindingKey(Optional.empty(), TextStyle.INK);

  static final double FONT_PT = 6;
  static final double RADIUS_PT = 4.6;

  /** Number of letters that have room in their full size. */
  static final double ROOMY = 2.2;

  /** Its middle, from the upper left corner of the words about it. */
  static final XY BESIDE = new XY(-7, 4.2);

  /** A capital over its em, and half of it, by which letters are set in the middle. */
  private static final double HALF_CAPITAL = 0.35;

  /** Draws it beside words. */
  void writeOn(Sheet sheet, XY at) {
    drawOn(sheet, at.plus(BESIDE.x(), BESIDE.y()));
  }

  /** Draws it round a point, as decoration. */
  void drawOn(Sheet sheet, XY middle) {
    text.ifPresent(
        line ->
            sheet.decoration(
                () -> {
                  sheet.painter().fill(new Mark.Fill(Shapes.disc(middle, RADIUS_PT), colour));
                  XY at = middle.plus(-line.advancePx() / 2, HALF_CAPITAL * FONT_PT);
                  sheet.painter().text(line, at, Colour.WHITE);
                }));
  }
}
