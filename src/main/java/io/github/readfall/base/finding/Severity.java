package io.github.readfall.base.finding;

import java.util.Locale;

/** Severities of findings, the most severe first. */
public enum Severity {
  ERROR,
  WARNING,
  NOTE;

  /** The word in files and reports: {@code error}, {@code warning}, {@code note}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Tests whether this is as severe as another, or more so. */
  public boolean isAtLeast(Severity other) {
    return compareTo(other) <= 0;
  }
}
