package io.github.readfall.base.viewing;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Letters of one height as seen on one phone.
 *
 * @param phone in a reader's hand
 * @param dp their height on it, in density-independent pixels
 * @param mm the same in millimetres, nominal
 * @param arcmin the same as an angle, in minutes of arc
 * @param passes true if that is enough to be read
 * @param leastPx the smallest height that is, in strip pixels
 * @param betterPx the smallest height that is easy to read, in strip pixels
 */
public record AuditRow(
    Phone phone,
    double dp,
    double mm,
    double arcmin,
    boolean passes,
    double leastPx,
    double betterPx) {

  /** Less than any eye can see, more than arithmetic loses. */
  private static final double HAIR = 1e-9;

  static AuditRow of(
      Phone phone, double heightPx, double stripWidthPx, double leastArcmin, double betterArcmin) {
    double dp = phone.dp(heightPx, stripWidthPx);
    double arcmin = phone.angleOf(heightPx, stripWidthPx).arcmin();
    return new AuditRow(
        phone,
        dp,
        dp * Phone.DP_MM,
        arcmin,
        arcmin >= leastArcmin * (1 - HAIR),
        phone.lengthPx(new VisualAngle(leastArcmin), stripWidthPx),
        phone.lengthPx(new VisualAngle(betterArcmin), stripWidthPx));
  }

  /** A tenth, cut off, so that a failure does not look like a pass. */
  public static String down(double value) {
    return tenths(value + HAIR, RoundingMode.FLOOR);
  }

  /** A tenth, rounded up, so that what is asked for is enough. */
  public static String up(double value) {
    return tenths(value - HAIR, RoundingMode.CEILING);
  }

  private static String tenths(double value, RoundingMode mode) {
    return BigDecimal.valueOf(value).setScale(1, mode).toPlainString();
  }
}
