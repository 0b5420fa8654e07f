package io.github.readfall.plan;

import io.github.readfall.lettering.style.HouseStyle;

/** The greatest height of an episode that the publisher accepts. */
final class EpisodeLimit {

  private EpisodeLimit() {}

  /** The limit in strip pixels; the publisher counts pixels of the scaled strip. */
  static double px(HouseStyle style, double stripWidthPx) {
    return style.delivery().maxEpisodeHeightPx() * stripWidthPx / style.delivery().widthPx();
  }

  /** A height of the strip in the publisher's pixels. */
  static double delivered(double heightPx, HouseStyle style, double stripWidthPx) {
    return heightPx * style.delivery().widthPx() / stripWidthPx;
  }
}
