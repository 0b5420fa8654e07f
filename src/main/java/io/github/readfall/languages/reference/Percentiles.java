package io.github.readfall.languages.reference;

/** Percentiles by nearest rank: a value that was measured, never one between two. */
final class Percentiles {

  private Percentiles() {}

  /** The place of a percentile among so many sorted values, from 0. */
  static int rank(int values, int percent) {
    return Math.max(0, (values * percent + 99) / 100 - 1);
  }
}
