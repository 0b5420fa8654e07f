package io.github.readfall.window.model;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * A filter of findings.
 *
 * @param severities of the findings to show
 * @param words that the rule's id, message or advice must contain, in any case; empty for all
 */
public record FindingFilter(Set<Severity> severities, String words) {

  /** Shows all findings. */
  public static final FindingFilter ALL =
      new FindingFilter(Set.of(Severity.ERROR, Severity.WARNING, Severity.NOTE), "");

  public FindingFilter {
    severities = Set.copyOf(severities);
  }

  /** The findings to show, in the order of the strip; those without a place first. */
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

  /** The number of open findings of a severity, whether shown or not. */
  public static int count(List<Finding> findings, Severity severity) {
    return Finding.countOpen(findings, severity);
  }
}
