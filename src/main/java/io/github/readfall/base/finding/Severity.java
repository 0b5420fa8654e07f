package io.github.readfall.base.finding;

import java.util.Locale;

/** How grave a finding is, gravest first. */
public enum Severity {
  ERROR,
  WARNING,
  NOTE;

  /** The word in files and reports: {@code error}, {@code warning}, {@code note}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Whether this is as grave as the other, or graver. */
  public boolean isAtLeast(Severity other) {
    return compareTo(other) <= 0;
  }
}
