package io.github.readfall.type.balloon;

import io.github.readfall.type.text.LineBox;
import java.util.List;

/**
 * Lines centred below one another: for each, half its width, and its top and bottom below the
 * stack's middle, in strip pixels.
 *
 * <p>A value by agreement: its arrays are never written to. They are arrays because a fit examines
 * many.
 */
public final class Stack {

  private final double[] halves;
  private final double[] tops;
  private final double[] bottoms;
  private final double firstBaselinePx;

  private Stack(double[] halves, double[] tops, double[] bottoms, double firstBaselinePx) {
    this.halves = halves;
    this.tops = tops;
    this.bottoms = bottoms;
    this.firstBaselinePx = firstBaselinePx;
  }

  /** Stacks lines at a leading. */
  public static Stack of(List<LineBox> lines, double leadingPx) {
    return of(lines.toArray(LineBox[]::new), lines.size(), leadingPx);
  }

  static Stack of(LineBox[] lines, int count, double leadingPx) {
    double[] halves = new double[count];
    double[] tops = new double[count];
    double[] bottoms = new double[count];
    double top = Double.POSITIVE_INFINITY;
    double bottom = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      halves[i] = lines[i].width() / 2;
      tops[i] = i * leadingPx + lines[i].top();
      bottoms[i] = i * leadingPx + lines[i].bottom();
      top = Math.min(top, tops[i]);
      bottom = Math.max(bottom, bottoms[i]);
    }
    double middle = (top + bottom) / 2;
    for (int i = 0; i < count; i++) {
      tops[i] -= middle;
      bottoms[i] -= middle;
    }
    return new Stack(halves, tops, bottoms, -middle);
  }

  public int lines() {
    return halves.length;
  }

  public double halfWidthPx(int line) {
    return halves[line];
  }

  /** Top of a line's box, from the stack's middle downwards. */
  public double topPx(int line) {
    return tops[line];
  }

  /** Bottom of a line's box, from the stack's middle downwards. */
  public double bottomPx(int line) {
    return bottoms[line];
  }

  /** The first baseline, from the stack's middle downwards. */
  public double firstBaselinePx() {
    return firstBaselinePx;
  }

  /** Half the width of the widest line. */
  public double halfWidthPx() {
    double widest = 0;
    for (double half : halves) {
      widest = Math.max(widest, half);
    }
    return widest;
  }

  /** Half the height from the highest top to the lowest bottom. */
  public double halfHeightPx() {
    double highest = 0;
    for (int i = 0; i < tops.length; i++) {
      highest = Math.max(highest, Math.max(-tops[i], bottoms[i]));
    }
    return highest;
  }
}
