package io.github.readfall.window.script;

import io.github.readfall.base.finding.Finding;
import java.util.List;
import java.util.stream.Collectors;

/** The tooltip of findings, shown over their underlines. */
final class FindingTip {

  /** About as wide as a sentence is comfortably read, in the points of Swing's HTML. */
  private static final int WIDTH = 320;

  private FindingTip() {}

  static String of(List<Finding> findings) {
    return findings.stream()
        .map(FindingTip::of)
        .collect(
            Collectors.joining(
                "<hr>", "<html><body style='width:" + WIDTH + "px'>", "</body></html>"));
  }

  private static String of(Finding finding) {
    String advice = finding.advice().isEmpty() ? "" : "<p>" + escaped(finding.advice()) + "</p>";
    return "<p><b>" + escaped(finding.message()) + "</b></p>" + advice;
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
