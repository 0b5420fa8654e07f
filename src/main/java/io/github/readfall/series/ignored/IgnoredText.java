package io.github.readfall.series.ignored;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.script.Cue;
import io.github.readfall.script.Script;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tomlj.Toml;

/** Changes the text of a set-aside.toml, and leaves the rest of it as the person wrote it. */
public final class IgnoredText {

  private static final String HEAD =
      """
      # Findings that were looked at and left as they are. Each is known again by its rule and by
      # what its balloons say; take an entry out to hear of it again.
      """;

  private IgnoredText() {}

  /**
   * The text with one more finding set aside.
   *
   * @param before empty where there is no such file yet
   * @param script that the finding is about
   * @param reason in one line; not blank
   */
  public static String with(String before, Finding finding, Script script, String reason) {
    StringBuilder text = new StringBuilder(before.isEmpty() ? HEAD : before);
    if (text.charAt(text.length() - 1) != '\n') {
      text.append('\n');
    }
    text.append("\n[[").append(IgnoredReader.ENTRIES).append("]]\n");
    line(text, IgnoredReader.RULE, quoted(finding.rule()));
    finding
        .where()
        .panel()
        .ifPresent(panel -> line(text, IgnoredReader.PANEL, Integer.toString(panel)));
    List<String> cues =
        finding.where().balloons().stream()
            .flatMap(id -> script.cue(id).stream())
            .map(IgnoredText::said)
            .toList();
    if (!cues.isEmpty()) {
      line(text, IgnoredReader.CUES, cues.stream().collect(Collectors.joining(", ", "[", "]")));
    }
    line(text, IgnoredReader.REASON, quoted(reason.strip().replaceAll("\\s+", " ")));
    return text.toString();
  }

  /**
   * The text without an entry; empty where it cannot be told where that ends.
   *
   * @param entry as it was read from the text
   */
  public static Optional<String> without(String before, IgnoredFinding entry) {
    List<String> lines = new ArrayList<>(before.lines().toList());
    int first = entry.line() - 1;
    if (first >= lines.size() || !isHeader(lines.get(first))) {
      return Optional.empty();
    }
    int end = first + 1;
    while (end < lines.size() && !isHeader(lines.get(end))) {
      end++;
    }
    while (end > first + 1 && end < lines.size() && isRemark(lines.get(end - 1))) {
      end--;
    }
    lines.subList(first, end).clear();
    String after = lines.stream().map(line -> line + "\n").collect(Collectors.joining());
    return Optional.of(after).filter(text -> isWithout(before, text));
  }

  private static boolean isHeader(String line) {
    return line.strip().startsWith("[[");
  }

  /** A remark above the next entry is of that one. */
  private static boolean isRemark(String line) {
    return line.isBlank() || line.strip().startsWith("#");
  }

  private static boolean isWithout(String before, String after) {
    int many = IgnoredReader.read(before, "").entries().size();
    return IgnoredReader.read(after, "").entries().size() == many - 1;
  }

  private static String said(Cue cue) {
    return quoted(IgnoredFinding.said(cue.speaker(), cue.text().raw()));
  }

  private static void line(StringBuilder text, String key, String value) {
    text.append(key).append(" = ").append(value).append('\n');
  }

  private static String quoted(String words) {
    return '"' + Toml.tomlEscape(words).toString() + '"';
  }
}
