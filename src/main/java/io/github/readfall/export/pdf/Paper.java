package io.github.readfall.export.pdf;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Phone;
import io.github.readfall.strip.galley.Galley;

/**
 * The division of a page of a proof, in points from its upper left corner: the strip, then the
 * findings, then the script. House defaults, no source.
 *
 * @param ptPerPx points in a strip pixel
 * @param stripPt width of the strip
 */
record Paper(double ptPerPx, double stripPt) {

  /** A point is a 72nd of an inch. */
  static final double PT_PER_MM = 72 / 25.4;

  /** A4, ISO 216: 210 by 297 mm. */
  static final double WIDTH = 210 * PT_PER_MM;

  static final double HEIGHT = 297 * PT_PER_MM;

  static final double SIDE = 36;
  static final double TOP = 46;
  static final double BOTTOM = HEIGHT - 42;

  /** Distance between the strip and the findings: room for the letters that join them. */
  static final double ALLEY = 40;

  static final double GAP = 14;

  /** The strip is larger than on the phone, so that notes on it can be read. */
  private static final double OVER_PHONE = 1.25;

  /** The widest that leaves room for columns; no phone is so wide, but some tablets are. */
  private static final double WIDEST_STRIP = 270;

  static Paper of(Galley galley) {
    Phone phone = galley.set().phone();
    double onPhone = phone.widthDp() * Phone.DP_MM * PT_PER_MM;
    double strip = Math.min(OVER_PHONE * onPhone, WIDEST_STRIP);
    return new Paper(strip / galley.widthPx(), strip);
  }

  /** Width of the strip in millimetres. */
  double stripMm() {
    return stripPt / PT_PER_MM;
  }

  /** The width of a column. */
  double columnPt() {
    return (scriptEnd() - findingsX() - GAP) / 2;
  }

  double findingsX() {
    return SIDE + stripPt + ALLEY;
  }

  /** The place of the script on a page without findings. */
  double besideStripX() {
    return SIDE + stripPt + 2 * GAP;
  }

  double scriptX() {
    return findingsX() + columnPt() + GAP;
  }

  private double scriptEnd() {
    return WIDTH - SIDE;
  }

  /** The greatest height of a strip that fits a page, in strip pixels. */
  double segmentPx() {
    return Math.max(1, Math.floor((BOTTOM - TOP) / ptPerPx));
  }

  /** The place of a height of the strip on the page of a segment. */
  double yPt(double yPx, Segment segment) {
    return TOP + (yPx - segment.topPx()) * ptPerPx;
  }

  /** The upper left corner of a segment. */
  XY origin() {
    return new XY(SIDE, TOP);
  }

  /** The place of a box of the strip on the page of a segment. */
  Box onPage(Box box, Segment segment) {
    return new Box(
        SIDE + box.x() * ptPerPx,
        yPt(box.y(), segment),
        box.width() * ptPerPx,
        box.height() * ptPerPx);
  }
}
