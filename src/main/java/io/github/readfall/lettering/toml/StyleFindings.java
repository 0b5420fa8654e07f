package io.github.readfall.lettering.toml;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Where;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import org.tomlj.TomlPosition;

/** Collects everything wrong with one series.toml while it is read. */
public final class StyleFindings {

  static final String SYNTAX = "style/syntax";
  public static final String UNKNOWN_KEY = "style/unknown-key";
  public static final String WRONG_TYPE = "style/wrong-type";
  public static final String IMPOSSIBLE = "style/impossible";

  private static final int MOST = 100; // nobody reads more at once

  private final String file;
  private final List<Finding> findings = new ArrayList<>();
  private final List<TomlPosition> left = new ArrayList<>();

  public StyleFindings(String file) {
    this.file = file;
  }

  /** Adds one fault; the advice is only computed if it will be shown. */
  public void add(String rule, TomlPosition at, String message, Supplier<String> advice) {
    if (findings.size() == MOST) {
      left.add(at);
      return;
    }
    Where where = Where.at(file, at.line(), at.column());
    findings.add(Finding.of(rule, Severity.WARNING, where, message, advice.get()));
  }

  /** The faults in the order of the file, and how many more there are. */
  public List<Finding> inOrder() {
    List<Finding> sorted = new ArrayList<>(findings);
    sorted.sort(
        Comparator.comparingInt((Finding f) -> f.where().line().orElse(0))
            .thenComparingInt(f -> f.where().column().orElse(0)));
    if (!left.isEmpty()) {
      TomlPosition first = left.get(0);
      sorted.add(
          Finding.of(
              SYNTAX,
              Severity.WARNING,
              Where.at(file, first.line(), first.column()),
              left.size() + " more faults in this file are not listed.",
              "Fix those listed and read the file again."));
    }
    return sorted;
  }
}
