package io.github.readfall.script;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A script divided into several parts. Every line goes into one part, as it is; every part begins
 * with the headers, and with the heading of its scene if that began in a part before. The number of
 * the episode gets the part's letter.
 */
public final class ScriptParts {

  private static final String EPISODE = "Episode";

  private final Script script;

  private ScriptParts(Script script) {
    this.script = script;
  }

  /**
   * The text of each part.
   *
   * @param firstPanels number of each part's first panel, rising, the first of them 1
   * @param letters of the parts, as many as there are parts
   */
  public static List<String> of(Script script, List<Integer> firstPanels, List<String> letters) {
    return new ScriptParts(script).parts(firstPanels, letters);
  }

  private List<String> parts(List<Integer> firstPanels, List<String> letters) {
    List<String> parts = new ArrayList<>();
    for (int i = 0; i < firstPanels.size(); i++) {
      boolean last = i + 1 == firstPanels.size();
      int end = last ? script.lines().size() : startOf(firstPanels.get(i + 1)) - 1;
      parts.add(
          i == 0
              ? text(1, end, letters.get(0), "")
              : text(
                  startOf(firstPanels.get(i)),
                  end,
                  letters.get(i),
                  head(firstPanels.get(i), letters.get(i))));
    }
    return parts;
  }

  private String text(int first, int last, String letter, String head) {
    StringBuilder text = new StringBuilder(script.byteOrderMark() ? "\uFEFF" : "").append(head);
    for (int line = first; line <= last; line++) {
      text.append(line(line, letter));
    }
    return text.toString();
  }

  /** Headers, and the heading of a scene that continues, each with an empty line below. */
  private String head(int firstPanel, String letter) {
    StringBuilder head = new StringBuilder();
    for (int line = 1; line <= script.lines().size(); line++) {
      head.append(kind(line) == LineKind.HEADER ? line(line, letter) : "");
    }
    head.append(head.length() > 0 ? ending() : "");
    goingOn(firstPanel)
        .ifPresent(scene -> head.append(line(scene.line(), letter)).append(ending()));
    return head.toString();
  }

  private Optional<Scene> goingOn(int firstPanel) {
    return script
        .panels()
        .get(firstPanel - 1)
        .scene()
        .map(scene -> script.scenes().get(scene - 1))
        .filter(scene -> scene.panels().get(0) < firstPanel);
  }

  /**
   * The line on which a part begins: the panel's or its scene's, with the notes above it that an
   * empty line separates from what is before them.
   */
  private int startOf(int panel) {
    LineRange before = script.linesOf(script.panels().get(panel - 2));
    int line = before.last();
    while (line > before.first() && isGap(line)) {
      line--;
    }
    line++;
    while (line <= before.last() && kind(line) == LineKind.NOTE) {
      line++;
    }
    while (line <= before.last() && kind(line) == LineKind.BLANK) {
      line++;
    }
    return line;
  }

  private boolean isGap(int line) {
    return kind(line) == LineKind.NOTE || kind(line) == LineKind.BLANK;
  }

  private LineKind kind(int line) {
    return script.lines().get(line - 1).kind();
  }

  /** A line as it is, except that the episode's number gets its letter. */
  private String line(int number, String letter) {
    SourceLine line = script.lines().get(number - 1);
    boolean numbered =
        script.headers().stream()
            .filter(header -> header.key().equalsIgnoreCase(EPISODE))
            .filter(header -> header.line() == number && !header.value().isEmpty())
            .anyMatch(header -> line.text().stripTrailing().endsWith(header.value()));
    String text = numbered ? lettered(line.text().stripTrailing(), letter) : line.text();
    return text + line.ending();
  }

  private static String lettered(String numbered, String letter) {
    boolean digit = Character.isDigit(numbered.codePointBefore(numbered.length()));
    return numbered + (digit ? "" : " ") + letter;
  }

  /** The script's line ending. */
  private String ending() {
    return script.lines().stream()
        .map(SourceLine::ending)
        .filter(ending -> !ending.isEmpty())
        .findFirst()
        .orElse("\n");
  }
}
