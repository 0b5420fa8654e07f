package io.github.readfall.base.finding;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The number that proves a finding.
 *
 * @param measured the value found
 * @param limit asked for by the house style, in the same unit
 * @param unit of both, as printed, e.g. {@code arcmin}, {@code px}, {@code words}
 */
public record Measurement(double measured, double limit, String unit) {

  /** A share of a limit that nobody sees. House default, no source. */
  private static final double UNSEEN = 0.02;

  /** Less than any eye can see, more than arithmetic loses. */
  private static final double HAIR = 1e-9;

  /** Returns true unless the value is so little below the limit that nobody sees it. */
  public boolean canBeSeen() {
    return measured >= limit || measured < limit * (1 - UNSEEN);
  }

  /**
   * The value with its unit, to a tenth and away from the limit, so that a failure does not look
   * like a pass: 5.96 dp of 6 is shown as {@code 5.9 dp}.
   */
  public String figure() {
    boolean isShort = measured < limit;
    double safe = isShort ? measured + HAIR : measured - HAIR;
    String number = tenth(safe, isShort ? RoundingMode.FLOOR : RoundingMode.CEILING);
    boolean isOne = number.equals("1") && unit.endsWith("s");
    return number + " " + (isOne ? unit.substring(0, unit.length() - 1) : unit);
  }

  /** The limit, to a tenth. */
  public String limitFigure() {
    return tenth(limit, RoundingMode.HALF_UP);
  }

  private static String tenth(double value, RoundingMode how) {
    return BigDecimal.valueOf(value).setScale(1, how).stripTrailingZeros().toPlainString();
  }
}
