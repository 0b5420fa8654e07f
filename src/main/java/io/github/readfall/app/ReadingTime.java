package io.github.readfall.app;

import io.github.readfall.wording.Wording;

/** How long something is read, in words. */
final class ReadingTime {

  private ReadingTime() {}

  /** Minutes and seconds, or seconds alone. */
  static String of(double seconds) {
    long whole = Math.round(seconds);
    return whole < 60
        ? Wording.of("figures.seconds", whole)
        : Wording.of("figures.minutes", whole / 60, whole % 60);
  }
}
