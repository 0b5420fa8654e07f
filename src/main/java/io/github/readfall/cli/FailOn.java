package io.github.readfall.cli;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import java.util.List;

/** The severity from which findings make a command fail. */
enum FailOn {
  error,
  warning,
  note,
  never;

  /** 1 if a finding is at least as severe, else 0. */
  int status(List<Finding> findings) {
    return findings.stream().anyMatch(finding -> finding.isOpen() && fails(finding.severity()))
        ? 1
        : 0;
  }

  private boolean fails(Severity severity) {
    return switch (this) {
      case error -> severity.isAtLeast(Severity.ERROR);
      case warning -> severity.isAtLeast(Severity.WARNING);
      case note -> true;
      case never -> false;
    };
  }
}
