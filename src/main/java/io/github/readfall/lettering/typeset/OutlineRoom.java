package io.github.readfall.lettering.typeset;

import io.github.readfall.type.balloon.DrawnOutline;
import io.github.readfall.type.balloon.Enclosed;
import io.github.readfall.type.balloon.Enclosure;
import io.github.readfall.type.balloon.Stack;
import io.github.readfall.type.text.LineBox;
import java.util.function.DoublePredicate;

/**
 * The greatest width of a line in a given outline with its margin, at every height: measured at a
 * few heights and taken to be straight between them, which in an outline without dents is never too
 * wide.
 */
public final class OutlineRoom {

  private static final int STEPS = 64;
  private static final int HALVINGS = 18;

  /** A margin this much short of its measure is kept: see {@link BalloonSetter}. */
  private static final double HAIR_PX = 0.02;

  private final DrawnOutline drawn;
  private final Enclosure enclosure;
  private final double marginPx;
  private final double highestPx;
  private final double[] halvesPx;

  private OutlineRoom(
      DrawnOutline drawn,
      Enclosure enclosure,
      double marginPx,
      double highestPx,
      double[] halvesPx) {
    this.drawn = drawn;
    this.enclosure = enclosure;
    this.marginPx = marginPx;
    this.highestPx = highestPx;
    this.halvesPx = halvesPx;
  }

  /**
   * The room in an outline of a cue's shape, with its margin.
   *
   * @param widthPx of the drawn outline; positive
   * @param heightPx of the drawn outline; positive
   */
  public static OutlineRoom of(ShapedCue cue, double widthPx, double heightPx) {
    DrawnOutline drawn = Copyfit.into(cue, widthPx, heightPx).drawn();
    return in(drawn, cue.enclosure(), cue.rules().marginPx());
  }

  private static OutlineRoom in(DrawnOutline drawn, Enclosure enclosure, double marginPx) {
    double a = drawn.halfWidthPx();
    double b = drawn.halfHeightPx();
    double kept = marginPx - HAIR_PX;
    double highest = furthest(b, y -> enclosure.insidePx(a, b, marginPx, 0, y) >= kept);
    double[] halves = new double[STEPS + 1];
    for (int i = 0; i <= STEPS; i++) {
      double along = Math.max(0, highest) * i / STEPS;
      halves[i] = furthest(a, x -> enclosure.insidePx(a, b, marginPx, x, along) >= kept);
    }
    return new OutlineRoom(drawn, enclosure, marginPx, highest, halves);
  }

  /**
   * The greatest distance from the middle at which a condition holds; negative if it never does.
   */
  private static double furthest(double edgePx, DoublePredicate holds) {
    if (!holds.test(0)) {
      return -1;
    }
    double in = 0;
    double out = edgePx;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (in + out) / 2;
      boolean inside = holds.test(middle);
      in = inside ? middle : in;
      out = inside ? out : middle;
    }
    return in;
  }

  /** The height from the outline's middle beyond which no line has room; negative for none. */
  double highestPx() {
    return highestPx;
  }

  /** Half the room at a height; beyond the highest, that at the highest. */
  private double halfPx(double alongPx) {
    double at = highestPx > 0 ? Math.min(1, Math.abs(alongPx) / highestPx) * STEPS : 0;
    int below = Math.min(STEPS - 1, (int) at);
    double share = at - below;
    return halvesPx[below] * (1 - share) + halvesPx[below + 1] * share;
  }

  /** The greatest width of a line like this with its baseline there, if it may be there. */
  double widthPx(double baselinePx, LineBox line) {
    return 2 * Math.min(halfPx(baselinePx + line.top()), halfPx(baselinePx + line.bottom()));
  }

  /** Returns true if lines keep their margin with their middle so far below the outline's. */
  boolean holds(Stack stack, double shiftPx) {
    Enclosed there = new Enclosed(drawn.halfWidthPx(), drawn.halfHeightPx(), -shiftPx, 0);
    return enclosure.insidePx(there, marginPx, stack) >= marginPx - HAIR_PX;
  }
}
