package io.github.readfall.plan;

import io.github.readfall.script.Shot;
import io.github.readfall.script.ShotHints;

/**
 * The height of a panel by its shot alone, as a share of the strip's width. The farther away the
 * view, the more height the picture needs. House defaults, no source.
 */
final class ShotHeight {

  private static final double UNSAID = 0.75;
  private static final double TALL = 1.5;
  private static final double WIDE = 0.8;

  private ShotHeight() {}

  /** The share that a panel line asks for. */
  static double of(ShotHints hints) {
    double share = hints.shot().map(ShotHeight::of).orElse(UNSAID);
    return share * (hints.tall() ? TALL : 1) * (hints.wide() ? WIDE : 1);
  }

  private static double of(Shot shot) {
    return switch (shot) {
      case EXTREME_LONG -> 1.1;
      case LONG -> 0.9;
      case FULL -> 0.95;
      case MEDIUM_LONG -> 0.85;
      case MEDIUM -> 0.75;
      case MEDIUM_CLOSE_UP -> 0.7;
      case CLOSE_UP -> 0.65;
      case EXTREME_CLOSE_UP -> 0.5;
    };
  }
}
