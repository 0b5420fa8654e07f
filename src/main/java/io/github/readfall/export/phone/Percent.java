package io.github.readfall.export.phone;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Shares as style sheets write them. */
final class Percent {

  private static final int DECIMALS = 4;

  private Percent() {}

  /** A share of 1, for example {@code 12.5%}. */
  static String of(double share) {
    return BigDecimal.valueOf(100 * share)
            .setScale(DECIMALS, RoundingMode.HALF_EVEN)
            .stripTrailingZeros()
            .toPlainString()
        + "%";
  }
}
