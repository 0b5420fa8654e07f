package io.github.readfall.script;

import io.github.readfall.finding.Finding;
import io.github.readfall.finding.Severity;
import io.github.readfall.finding.Where;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Gathers what is wrong with a script. */
final class FindingList {

  /** Letters of the script that a message quotes at most. */
  static final int MOST_QUOTED = 40;

  private final List<Finding> findings = new ArrayList<>();

  void error(String rule, int line, int column, String message, String advice) {
    add(rule, Severity.ERROR, Where.at("", line, column), message, advice);
  }

  void warning(String rule, int line, int column, String message, String advice) {
    add(rule, Severity.WARNING, Where.at("", line, column), message, advice);
  }

  void note(String rule, int line, int column, String message, String advice) {
    add(rule, Severity.NOTE, Where.at("", line, column), message, advice);
  }

  void add(Finding finding) {
    findings.add(finding);
  }

  /** All of them in the order of their places. */
  List<Finding> sorted() {
    return findings.stream()
        .sorted(
            Comparator.comparingInt((Finding f) -> f.where().line().orElse(0))
                .thenComparingInt(f -> f.where().column().orElse(0)))
        .toList();
  }

  private void add(String rule, Severity severity, Where where, String message, String advice) {
    findings.add(Finding.of("script/" + rule, severity, where, message, advice));
  }
}
