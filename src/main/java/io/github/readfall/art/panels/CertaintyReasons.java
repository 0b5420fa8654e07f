package io.github.readfall.art.panels;

import io.github.readfall.base.geom.Box;
import java.util.ArrayList;
import java.util.List;

/**
 * The certainty of a found panel, and the reason why it is not greater. House defaults, no source.
 *
 * @param certainty from 0 to 1
 * @param reason in a few words
 */
record CertaintyReasons(double certainty, String reason) {

  private static final double MOST = 0.98;
  private static final double PARTED = 0.9;
  private static final double AT_END = 0.9;
  private static final double GUESSED = 0.7;
  private static final double SMALL = 0.9;
  private static final double SMALL_AREA = 0.08; // in squares of the strip's width

  static CertaintyReasons of(PanelSides frame, Box box, Box strip) {
    double certainty = MOST * (0.8 + 0.2 * frame.leastShare());
    List<String> reasons = new ArrayList<>();
    if (frame.parted()) {
      certainty *= PARTED;
      reasons.add("something crosses its gutter");
    }
    if (box.y() <= 0 || box.bottom() >= strip.bottom()) {
      certainty *= AT_END;
      reasons.add("the picture ends at its edge");
    }
    int guessed = frame.guessed();
    if (guessed > 0) {
      certainty *= StrictMath.pow(GUESSED, guessed);
      reasons.add((guessed == 1 ? "one edge" : guessed + " edges") + " guessed");
    }
    if (box.width() * box.height() < SMALL_AREA * strip.width() * strip.width()) {
      certainty *= SMALL;
      reasons.add("small");
    }
    return new CertaintyReasons(
        certainty, reasons.isEmpty() ? "clear gutters all round" : String.join("; ", reasons));
  }
}
