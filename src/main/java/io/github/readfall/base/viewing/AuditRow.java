package io.github.readfall.base.viewing;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * How letters of one height are seen on one phone.
 *
 * @param phone in a reader's hand
 * @param dp their height on it, in density-independent pixels
 * @param mm the same in millimetres, nominal
 * @param arcmin the same as it is seen, in minutes of arc
 * @param passes whether that is enough to be read
 * @param leastPx the smallest height that is, in strip pixels
 * @param betterPx the smallest height that is read with ease, in strip pixels
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

  /** To a tenth, cut off, so that what fails does not look as if it passed. */
  public static String down(double value) {
    return tenths(value + HAIR, RoundingMode.FLOOR);
  }

  /** To a tenth, rounded up, so that what is asked for is enough. */
  public static String up(double value) {
    return tenths(value - HAIR, RoundingMode.CEILING);
  }

  private static String tenths(double value, RoundingMode mode) {
    return BigDecimal.valueOf(value).setScale(1, mode).toPlainString();
  }
}
