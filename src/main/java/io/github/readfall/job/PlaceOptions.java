package io.github.readfall.job;

/**
 * What a person allows when an episode is placed.
 *
 * @param openGutters true if gutters may be opened where a panel lacks room
 * @param afresh true if balloons that have a place are placed again; pinned ones never are
 */
public record PlaceOptions(boolean openGutters, boolean afresh) {

  /** Leaves placed balloons where they are, as far as that is right. */
  public static final PlaceOptions KEEP = new PlaceOptions(false, false);
}
