package io.github.readfall.script.lines;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Where;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects everything wrong with a script. */
public final class FindingList {

  /** Most letters of the script that a message quotes. */
  public static final int MAX_QUOTED = 40;

  private final List<Finding> findings = new ArrayList<>();

  public void error(String rule, int line, int column, String message, String advice) {
    add(rule, Severity.ERROR, Where.at("", line, column), message, advice);
  }

  public void warning(String rule, int line, int column, String message, String advice) {
    add(rule, Severity.WARNING, Where.at("", line, column), message, advice);
  }

  public void note(String rule, int line, int column, String message, String advice) {
    add(rule, Severity.NOTE, Where.at("", line, column), message, advice);
  }

  public void add(Finding finding) {
    findings.add(finding);
  }

  /** All of them in the order of their places. */
  public List<Finding> sorted() {
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
