package io.github.readfall.strip;

import java.util.List;

/**
 * Where the strip is cut, from the top, in rising order, its two ends left out. Strip pixels.
 *
 * @param pages ends of canvas pages
 * @param pagesGiven whether layout.json says so; else they are planned
 * @param slices ends of the publisher's slices, always planned
 */
public record Cuts(List<Double> pages, boolean pagesGiven, List<Double> slices) {

  public static final Cuts NONE = new Cuts(List.of(), false, List.of());

  public Cuts {
    pages = List.copyOf(pages);
    slices = List.copyOf(slices);
  }
}
