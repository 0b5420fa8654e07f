package io.github.readfall.job;

/**
 * What a person allows when an episode is placed.
 *
 * @param openGutters whether the strip may be opened where a panel lacks room
 * @param afresh whether balloons that have a place are placed again; pinned ones never are
 */
public record PlaceOptions(boolean openGutters, boolean afresh) {

  /** Leaves what is placed where it is, as far as that is right. */
  public static final PlaceOptions KEEP = new PlaceOptions(false, false);
}
