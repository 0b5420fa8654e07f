package io.github.readfall.plan.order;

import java.util.List;

/**
 * An element to move so that all are read in script order.
 *
 * @param index its place among its kind, from 0, in script order
 * @param others the elements it is inverted with, in script order; at least one
 */
public record Displaced(int index, List<Integer> others) {

  public Displaced {
    others = List.copyOf(others);
  }
}
