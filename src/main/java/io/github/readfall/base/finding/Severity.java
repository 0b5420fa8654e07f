package io.github.readfall.base.finding;

import java.util.Collection;
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
  public boolean atLeast(Severity other) {
    return compareTo(other) <= 0;
  }

  /** How many findings are as grave as this, those left out that are set aside. */
  public int openIn(Collection<Finding> findings) {
    return Math.toIntExact(
        findings.stream().filter(f -> f.isOpen() && f.severity() == this).count());
  }
}
