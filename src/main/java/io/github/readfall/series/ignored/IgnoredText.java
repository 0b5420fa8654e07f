package io.github.readfall.series.ignored;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.lettering.toml.TomlValue;
import io.github.readfall.script.Cue;
import io.github.readfall.script.Script;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Edits the text of an ignored.toml and leaves the rest of it as its author wrote it. */
public final class IgnoredText {

  private static final String HEAD =
      """
      # Findings that are ignored, with the reason. Each is recognised by its rule and by what its
      # balloons say; delete an entry to see the finding again.
      """;

  private IgnoredText() {}

  /**
   * The text with one more ignored finding.
   *
   * @param before empty if there is no file yet
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
            .map(IgnoredText::cueText)
            .toList();
    if (!cues.isEmpty()) {
      line(text, IgnoredReader.CUES, cues.stream().collect(Collectors.joining(", ", "[", "]")));
    }
    line(text, IgnoredReader.REASON, quoted(reason.strip().replaceAll("\\s+", " ")));
    return text.toString();
  }

  /**
   * The text without an entry; empty if the entry has no {@code [[finding]]} of its own.
   *
   * @param entry as read from this text
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
    while (end > first + 1 && end < lines.size() && isComment(lines.get(end - 1))) {
      end--;
    }
    lines.subList(first, end).clear();
    String after = lines.stream().map(line -> line + "\n").collect(Collectors.joining());
    return Optional.of(after).filter(text -> isWithout(before, text));
  }

  private static boolean isHeader(String line) {
    return line.strip().startsWith("[[");
  }

  /** Comments above the next entry belong to that one. */
  private static boolean isComment(String line) {
    return line.isBlank() || line.strip().startsWith("#");
  }

  private static boolean isWithout(String before, String after) {
    int count = IgnoredReader.read(before, "").entries().size();
    return IgnoredReader.read(after, "").entries().size() == count - 1;
  }

  private static String cueText(Cue cue) {
    return quoted(IgnoredFinding.cueText(cue.names(), cue.text().raw()));
  }

  private static void line(StringBuilder text, String key, String value) {
    text.append(key).append(" = ").append(value).append('\n');
  }

  private static String quoted(String words) {
    return new TomlValue.Words(words).toml();
  }
}
