package io.github.readfall.export.phone;

import java.awt.Shape;
import java.awt.geom.PathIterator;

/** Outlines in few letters: relative steps on a grid (SVG 2, section 9.3). */
final class ShortPath {

  /** The letters of the kinds of step, in the order of {@link PathIterator}. */
  private static final String LETTERS = "mlqcz";

  private final int decimals;
  private final StringBuilder out = new StringBuilder();
  private final long[] pen = new long[2];
  private final long[] start = new long[2];

  private ShortPath(int decimals) {
    this.decimals = decimals;
  }

  /**
   * The path data of an outline; empty if there is nothing to draw.
   *
   * @param decimals of a unit that are kept, 0 or 1; the pen never leaves the grid
   */
  static String of(Shape shape, int decimals) {
    ShortPath path = new ShortPath(decimals);
    double[] c = new double[6];
    char last = ' ';
    for (PathIterator it = shape.getPathIterator(null); !it.isDone(); it.next()) {
      int kind = it.currentSegment(c);
      char letter = LETTERS.charAt(kind);
      boolean isSaid = letter == last && letter != 'm' && letter != 'z';
      path.step(letter, isSaid, c, points(kind));
      last = letter;
    }
    return path.out.toString();
  }

  private static int points(int kind) {
    return switch (kind) {
      case PathIterator.SEG_CLOSE -> 0;
      case PathIterator.SEG_QUADTO -> 2;
      case PathIterator.SEG_CUBICTO -> 3;
      default -> 1;
    };
  }

  private void step(char letter, boolean isSaid, double[] c, int points) {
    if (!isSaid) {
      out.append(letter);
    }
    long fromX = pen[0];
    long fromY = pen[1];
    for (int i = 0; i < points; i++) {
      pen[0] = onGrid(c[2 * i]);
      pen[1] = onGrid(c[2 * i + 1]);
      number(pen[0] - fromX, isSaid || i > 0);
      number(pen[1] - fromY, true);
    }
    if (letter == 'm') {
      start[0] = pen[0];
      start[1] = pen[1];
    } else if (letter == 'z') {
      pen[0] = start[0];
      pen[1] = start[1];
    }
  }

  private long onGrid(double value) {
    return Math.round(decimals == 0 ? value : value * 10);
  }

  /** A minus parts numbers as well as a space does. */
  private void number(long steps, boolean follows) {
    if (follows && steps >= 0) {
      out.append(' ');
    }
    long size = Math.abs(steps);
    out.append(steps < 0 ? "-" : "").append(decimals == 0 ? size : size / 10);
    if (decimals > 0 && size % 10 > 0) {
      out.append('.').append(size % 10);
    }
  }
}
