package io.github.readfall.job;

import java.util.ArrayList;
import java.util.List;
import java.util.function.LongSupplier;

/** Takes the time of one stage after the other. */
final class Stopwatch {

  private static final double NANOS_PER_MS = 1e6;

  private final LongSupplier nanos;
  private final List<Long> marks = new ArrayList<>();

  /** Starts. */
  Stopwatch(LongSupplier nanos) {
    this.nanos = nanos;
    mark();
  }

  /** Ends a stage and begins the next. */
  void mark() {
    marks.add(nanos.getAsLong());
  }

  /** The time that a stage took, counted from 0; 0 if it was not reached. */
  double ms(int stage) {
    return stage + 1 < marks.size() ? (marks.get(stage + 1) - marks.get(stage)) / NANOS_PER_MS : 0;
  }
}
