package io.github.readfall.rules.model;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.Function;

/** Writes numbers and lists for a sentence. */
public final class NumberText {

  /** Less than any eye can see, more than arithmetic loses. */
  private static final double HAIR = 1e-9;

  private NumberText() {}

  /** Returns true if a measure is below its limit by more than arithmetic loses. */
  public static boolean isShort(double measured, double limit) {
    return measured < limit * (1 - HAIR);
  }

  /** A number cut off, never rounded up, so that a failure does not look like a pass. */
  public static String down(double value, int places) {
    return plain(BigDecimal.valueOf(value + HAIR).setScale(places, RoundingMode.FLOOR));
  }

  /** A number rounded up, so that what is asked for is enough. */
  public static String up(double value, int places) {
    return plain(BigDecimal.valueOf(value - HAIR).setScale(places, RoundingMode.CEILING));
  }

  /** Whole pixels, rounded up except for what cannot be seen. */
  public static String upPx(double px) {
    return up(px - CheckedStrip.HAIR_PX / 2, 0);
  }

  /** Whole pixels, rounded down except for what cannot be seen. */
  public static String downPx(double px) {
    return down(px + CheckedStrip.HAIR_PX / 2, 0);
  }

  private static String plain(BigDecimal value) {
    return value.stripTrailingZeros().toPlainString();
  }

  /** The first items by name, and how many more there are: {@code a, b and 3 more}. */
  public static <T> String list(List<T> items, int most, Function<T, String> name) {
    String named = String.join(", ", items.stream().limit(most).map(name).toList());
    return items.size() > most ? named + " and " + (items.size() - most) + " more" : named;
  }
}
