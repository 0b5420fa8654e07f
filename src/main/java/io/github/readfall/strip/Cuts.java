package io.github.readfall.strip;

import java.util.List;

/**
 * The heights at which the strip is cut, in strip pixels, in rising order, without its two ends.
 *
 * @param pages ends of canvas pages
 * @param pagesGiven true if layout.json gives them, false if they are planned
 * @param slices ends of the publisher's slices, always planned
 */
public record Cuts(List<Double> pages, boolean pagesGiven, List<Double> slices) {

  public static final Cuts NONE = new Cuts(List.of(), false, List.of());

  public Cuts {
    pages = List.copyOf(pages);
    slices = List.copyOf(slices);
  }
}
