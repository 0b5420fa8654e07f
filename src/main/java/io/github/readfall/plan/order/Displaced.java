package io.github.readfall.plan.order;

import java.util.List;

/**
 * Something to move so that the eye meets all in the order of the script.
 *
 * @param index its place among its like, from 0, in script order
 * @param others what it is met in the other order with, in script order; at least one
 */
public record Displaced(int index, List<Integer> others) {

  public Displaced {
    others = List.copyOf(others);
  }
}
