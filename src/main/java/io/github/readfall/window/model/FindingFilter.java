package io.github.readfall.window.model;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Which findings are looked at.
 *
 * @param severities those that are
 * @param words that the rule's id or the sentence must hold, in any case; empty for all
 */
public record FindingFilter(Set<Severity> severities, String words) {

  /** All findings. */
  public static final FindingFilter ALL =
      new FindingFilter(Set.of(Severity.ERROR, Severity.WARNING, Severity.NOTE), "");

  public FindingFilter {
    severities = Set.copyOf(severities);
  }

  /** The findings that are looked at, in the order of the strip; those without a place first. */
  public List<Finding> of(List<Finding> findings) {
    return findings.stream()
        .filter(this::shows)
        .sorted(Comparator.comparingDouble(FindingFilter::heightPx))
        .toList();
  }

  private boolean shows(Finding finding) {
    String wanted = words.strip().toLowerCase(Locale.ROOT);
    String said = finding.rule() + " " + finding.message() + " " + finding.advice();
    return severities.contains(finding.severity())
        && said.toLowerCase(Locale.ROOT).contains(wanted);
  }

  private static double heightPx(Finding finding) {
    return finding.box().map(box -> box.y()).orElse(Double.NEGATIVE_INFINITY);
  }

  /** How many there are of a severity, looked at or not. */
  public static int count(List<Finding> findings, Severity severity) {
    return Finding.countOpen(findings, severity);
  }
}
