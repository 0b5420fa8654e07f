package io.github.readfall.cli.report;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import java.util.List;
import java.util.stream.Collectors;

/** A finding on a line of its own, and how many of them there are. */
final class FindingLine {

  private FindingLine() {}

  /** For example {@code error line 9 p1-1: What is wrong. How to fix it. [words/long]}. */
  static String of(Finding finding) {
    return "  "
        + finding.severity().word()
        + "  "
        + place(finding)
        + finding.message()
        + (finding.advice().isEmpty() ? "" : " " + finding.advice())
        + "  ["
        + finding.rule()
        + "]\n"
        + finding.reason().map(why -> "    ignored: " + why + "\n").orElse("");
  }

  private static String place(Finding finding) {
    String file = finding.where().file();
    String line =
        finding.where().line().isPresent() ? "line " + finding.where().line().getAsInt() : "";
    String balloons = String.join(", ", finding.where().balloons());
    String place =
        List.of(file, line, balloons).stream()
            .filter(part -> !part.isEmpty())
            .collect(Collectors.joining(" "));
    return place.isEmpty() ? "" : place + ": ";
  }

  /** For example {@code 1 error, 0 warnings, 2 notes}. */
  static String counts(List<Finding> findings) {
    return count(findings, Severity.ERROR, "error")
        + ", "
        + count(findings, Severity.WARNING, "warning")
        + ", "
        + count(findings, Severity.NOTE, "note")
        + ignored(findings);
  }

  private static String ignored(List<Finding> findings) {
    long count = findings.stream().filter(finding -> !finding.isOpen()).count();
    return count == 0 ? "" : ", " + count + " ignored";
  }

  private static String count(List<Finding> findings, Severity severity, String word) {
    return count(Finding.countOpen(findings, severity), word);
  }

  /** For example {@code 2 balloons}. */
  static String count(int count, String word) {
    return count + " " + word + (count == 1 ? "" : "s");
  }
}
