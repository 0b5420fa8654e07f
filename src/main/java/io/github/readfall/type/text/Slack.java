package io.github.readfall.type.text;

import io.github.readfall.type.font.GlyphRow;
import io.github.readfall.type.font.Ink;

/**
 * The empty room in a full-width mark, in strip pixels: half its width at most, a quarter if it is
 * drawn in the middle, and only if the face leaves it empty.
 *
 * @param isMark true if it is such a mark at all
 * @param leftPx empty before its ink
 * @param rightPx empty after its ink
 */
record Slack(boolean isMark, double leftPx, double rightPx) {

  /** Of a letter: none that could be given up. */
  static final Slack NONE = new Slack(false, 0, 0);

  /** The slack of a line's end: a mark beside it gives up its own. */
  static final Slack EDGE = new Slack(true, 0, 0);

  /** A glyph this wide, in em, takes a whole square. */
  private static final double FULL_EM = 0.9;

  /** Room that stays empty beside the ink, over the mark's width. House default, no source. */
  private static final double KEPT = 0.05;

  /**
   * A mark with more room than this to one side, over its width, is drawn to the other; one drawn
   * in the middle gives up a quarter. House default, no source.
   */
  private static final double ONE_SIDE = 0.38;

  /** The room in a glyph of a run. */
  static Slack of(PlacedRun run, int i, Compression marks) {
    GlyphRow row = run.glyphs();
    int letter = run.text().codePointAt(row.charIndex(i));
    double width = row.x(i + 1) - row.x(i);
    boolean full = width >= FULL_EM * run.type().face().unitsPerEm();
    if (!full || !(marks.opens(letter) || marks.closes(letter))) {
      return NONE;
    }
    Ink ink = run.type().face().ink(row.glyph(i), run.type().slantDeg());
    double scale = run.type().pxPerUnit();
    double left = marks.opens(letter) ? empty(ink.left(), width) * scale : 0;
    double right = marks.closes(letter) ? empty(width - ink.right(), width) * scale : 0;
    return new Slack(true, left, right);
  }

  private static double empty(double room, double width) {
    double free = Math.max(0, room - KEPT * width);
    boolean toOneSide = free > ONE_SIDE * width;
    return Math.min(free, toOneSide ? width / 2 : width / 4);
  }

  /**
   * The distance by which the next glyph moves nearer: of the empty room between two marks, one
   * half stays.
   */
  double givenUpPx(Slack next) {
    return isMark && next.isMark ? Math.max(rightPx, next.leftPx) : 0;
  }
}
