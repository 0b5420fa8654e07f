package io.github.readfall.strip.json;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Shortened;
import io.github.readfall.base.finding.Where;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** Collects everything wrong with one layout.json while it is read. */
public final class LayoutFindings {

  public static final String FILE = "layout.json";

  private static final int MOST = 100; // nobody reads more at once
  private static final int MOST_SHOWN = 40;

  /** A fault that is only counted: finding its line takes long in a long file. */
  private record Unlisted(String rule, Severity severity, int offset) {}

  private final String text;
  private final List<Integer> lineStarts = new ArrayList<>(List.of(0));
  private final List<Finding> findings = new ArrayList<>();
  private final List<Unlisted> left = new ArrayList<>();

  LayoutFindings(String text) {
    this.text = text;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean pair = c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
      if (c == '\n' || (c == '\r' && !pair)) {
        lineStarts.add(i + 1);
      }
    }
  }

  /** Reports that something is lost. */
  void error(String rule, int offset, String message, String advice) {
    add(rule, Severity.ERROR, offset, message, advice);
  }

  void warning(String rule, int offset, String message, String advice) {
    add(rule, Severity.WARNING, offset, message, advice);
  }

  void note(String rule, int offset, String message, String advice) {
    add(rule, Severity.NOTE, offset, message, advice);
  }

  /** Returns true if one more fault would only be counted, so that its message need not be made. */
  boolean isFull() {
    return findings.size() >= MOST;
  }

  /** Text that a person wrote, short enough for a sentence. */
  public static String shown(String written) {
    StringBuilder shown = new StringBuilder();
    Shortened.to(MOST_SHOWN, written)
        .codePoints()
        .forEach(c -> shown.appendCodePoint(Character.isISOControl(c) ? ' ' : c));
    return shown.toString();
  }

  private void add(String rule, Severity severity, int offset, String message, String advice) {
    String id = "layout/" + rule;
    if (!isFull()) {
      findings.add(Finding.of(id, severity, where(offset), message, advice));
    } else {
      left.add(new Unlisted(id, severity, offset));
    }
  }

  private Where where(int offset) {
    int found = Collections.binarySearch(lineStarts, offset);
    int line = found >= 0 ? found : -found - 2;
    int start = lineStarts.get(line);
    int end = Math.min(offset, text.length());
    return Where.at(FILE, line + 1, text.codePointCount(start, Math.max(start, end)) + 1);
  }

  /** The faults in the order of the file, and the number of those left out. */
  List<Finding> inOrder() {
    List<Finding> sorted = new ArrayList<>(findings);
    sorted.sort(
        Comparator.comparingInt((Finding f) -> f.where().line().orElse(0))
            .thenComparingInt(f -> f.where().column().orElse(0)));
    left.stream()
        .min(Comparator.comparing(Unlisted::severity))
        .ifPresent(severest -> sorted.add(andMore(severest)));
    return sorted;
  }

  private Finding andMore(Unlisted severest) {
    return Finding.of(
        severest.rule(),
        severest.severity(),
        where(severest.offset()),
        left.size() + " more faults in this file are not listed.",
        "Fix those listed and read the file again.");
  }
}
