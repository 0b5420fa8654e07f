package io.github.readfall.plan;

import io.github.readfall.base.wording.Wording;

/** A reading time in words, for example {@code 2 min 5 s}. */
public final class ReadingTime {

  private ReadingTime() {}

  /** Minutes and seconds, or seconds alone if it is less than a minute. */
  public static String of(double seconds) {
    long whole = Math.round(seconds);
    return whole < 60
        ? Wording.of("figures.seconds", whole)
        : Wording.of("figures.minutes", whole / 60, whole % 60);
  }
}
