package io.github.readfall.base.finding;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;

/** A change to the strip that fixes a finding, exact enough for a program to make. */
public sealed interface Fix {

  /** The precision of layout.json. */
  double HUNDREDTH_PX = 0.01;

  /** What to do, in a short sentence. */
  Phrase sentence();

  /**
   * Puts a balloon in another place; the tip of its tail stays.
   *
   * @param balloon id
   * @param to new top left corner of its box, in strip pixels
   */
  record Move(String balloon, XY to) implements Fix {
    @Override
    public Phrase sentence() {
      return Phrase.of("Move ").balloon(balloon).goal(balloon, to).then(".");
    }
  }

  /**
   * Gives a balloon another size and place.
   *
   * @param balloon id
   * @param box in strip pixels
   */
  record Resize(String balloon, Box box) implements Fix {
    @Override
    public Phrase sentence() {
      return Phrase.of("Make ")
          .balloon(balloon)
          .then(" " + whole(box.width()) + " × " + whole(box.height()) + " px.");
    }
  }

  /**
   * Ends one of a balloon's tails somewhere else.
   *
   * @param balloon id
   * @param tail from 0
   * @param tip in strip pixels
   */
  record TailTo(String balloon, int tail, XY tip) implements Fix {
    @Override
    public Phrase sentence() {
      return Phrase.of(tail == 0 ? "End the tail of " : "End the second tail of ")
          .balloon(balloon)
          .either(" at " + Phrase.whole(tip), " elsewhere")
          .then(".");
    }
  }

  /**
   * Cuts the strip at another height.
   *
   * @param fromPx the present cut, in strip pixels from the top
   * @param toPx the new one
   */
  record MoveCut(double fromPx, double toPx) implements Fix {
    @Override
    public Phrase sentence() {
      return Phrase.of("Move the cut ")
          .either(
              "at " + Math.round(fromPx) + " to " + Math.round(toPx),
              (toPx < fromPx ? "up by " : "down by ") + Math.round(Math.abs(toPx - fromPx)) + " px")
          .then(".");
    }
  }

  /** A size in whole pixels that is never less than the one meant. */
  private static long whole(double sizePx) {
    return (long) Math.ceil(sizePx - HUNDREDTH_PX);
  }
}
