package io.github.readfall.series.ignored;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/**
 * Reads ignored.toml. Faults are warnings, {@code ignored/syntax} or {@code ignored/entry}; the
 * rest of the file is used.
 */
public final class IgnoredReader {

  static final String ENTRIES = "finding";
  static final String RULE = "rule";
  static final String PANEL = "panel";
  static final String CUES = "cues";
  static final String REASON = "reason";

  private final String fileName;
  private final List<IgnoredFinding> entries = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  private IgnoredReader(String fileName) {
    this.fileName = fileName;
  }

  /**
   * Reads the text of an ignored.toml.
   *
   * @param toml any text
   * @param fileName for the findings
   */
  public static IgnoredFindings read(String toml, String fileName) {
    IgnoredReader reader = new IgnoredReader(fileName);
    reader.read(toml);
    return new IgnoredFindings(fileName, reader.entries, reader.findings);
  }

  private void read(String toml) {
    TomlParseResult parsed = Toml.parse(toml);
    for (TomlParseError error : parsed.errors()) {
      warn(
          "ignored/syntax",
          error.position(),
          "This is not TOML: " + error.getMessage() + ".",
          "Correct the line; until then this part of the file is not used.");
    }
    Object value = parsed.get(List.of(ENTRIES));
    if (value instanceof TomlArray items) {
      for (int i = 0; i < items.size(); i++) {
        item(items.get(i), items.inputPositionOf(i));
      }
    } else if (value != null) {
      item(value, TomlPosition.positionAt(1, 1));
    }
  }

  private void item(Object item, TomlPosition at) {
    if (item instanceof TomlTable table) {
      entry(table, at);
    } else {
      warn(
          "ignored/entry",
          at,
          "Each ignored finding needs its own [[finding]].",
          "Write [[finding]] above each entry.");
    }
  }

  private void entry(TomlTable table, TomlPosition at) {
    Optional<String> rule = text(table, RULE);
    Optional<String> reason = text(table, REASON);
    if (rule.isEmpty() || reason.isEmpty()) {
      warn(
          "ignored/entry",
          at,
          "This entry has no " + (rule.isEmpty() ? RULE : REASON) + ", so it ignores nothing.",
          rule.isEmpty()
              ? "Name the rule, e.g. rule = \"space/crowded\"."
              : "Say why it may stay, e.g. reason = \"They talk over each other.\".");
      return;
    }
    Object panel = table.get(List.of(PANEL));
    entries.add(
        new IgnoredFinding(
            rule.get(),
            panel instanceof Long number ? OptionalInt.of(number.intValue()) : OptionalInt.empty(),
            cues(table),
            reason.get(),
            at.line()));
  }

  private static List<String> cues(TomlTable table) {
    List<String> cues = new ArrayList<>();
    if (table.get(List.of(CUES)) instanceof TomlArray array) {
      for (int i = 0; i < array.size(); i++) {
        if (array.get(i) instanceof String cue) {
          cues.add(cue);
        }
      }
    }
    return cues;
  }

  private static Optional<String> text(TomlTable table, String key) {
    return Optional.ofNullable(table.get(List.of(key)))
        .filter(String.class::isInstance)
        .map(String.class::cast)
        .filter(text -> !text.isBlank());
  }

  private void warn(String rule, TomlPosition at, String message, String advice) {
    findings.add(
        Finding.of(
            rule, Severity.WARNING, Where.at(fileName, at.line(), at.column()), message, advice));
  }
}
