package io.github.readfall.window.model;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.style.ReadStyle;
import io.github.readfall.lettering.style.StyleReader;
import io.github.readfall.lettering.style.StyleText;
import io.github.readfall.lettering.toml.TomlValue;
import io.github.readfall.lettering.toml.UnchangeableText;
import io.github.readfall.series.StyleFile;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * A house style at one moment.
 *
 * @param read the style, and the findings of its reader
 * @param text that it was read from, to be changed; empty if it cannot be changed
 * @param remark a sentence that says why it cannot be changed; empty if it can
 */
public record StyleSnapshot(ReadStyle read, Optional<StyleText> text, Optional<String> remark) {

  /** The style of a script without a series. */
  public static final StyleSnapshot BUILT_IN =
      new StyleSnapshot(
          new ReadStyle(HouseStyle.DEFAULT, List.of()), Optional.empty(), Optional.empty());

  /** Reads a series.toml. */
  public static StyleSnapshot of(String toml) {
    ReadStyle read = new StyleReader().read(toml, StyleFile.NAME);
    try {
      return new StyleSnapshot(
          read, Optional.of(StyleText.of(toml, StyleFile.NAME)), Optional.empty());
    } catch (UnchangeableText e) {
      return new StyleSnapshot(read, Optional.empty(), Optional.ofNullable(e.getMessage()));
    }
  }

  /** Whether both were read from the same text. */
  boolean isLike(StyleSnapshot other) {
    return read.equals(other.read)
        && remark.equals(other.remark)
        && text.map(StyleText::text).equals(other.text.map(StyleText::text));
  }

  public HouseStyle style() {
    return read.style();
  }

  /** Whether the series sets a value itself. */
  public boolean says(StyleEntry entry) {
    return text.filter(toml -> toml.says(path(entry, toml))).isPresent();
  }

  private List<String> path(StyleEntry entry, StyleText toml) {
    return entry.path(toml, style().keywords());
  }

  /** The reader's message about the line of a value. */
  public Optional<String> complaint(StyleEntry entry) {
    return text.flatMap(toml -> toml.line(path(entry, toml)))
        .flatMap(line -> complaints(line).findFirst())
        .map(Finding::message);
  }

  private Stream<Finding> complaints(int line) {
    return read.findings().stream()
        .filter(finding -> finding.where().file().equals(StyleFile.NAME))
        .filter(finding -> finding.where().line().equals(OptionalInt.of(line)));
  }

  /**
   * The same style with another value, or with the built-in one if empty.
   *
   * @throws UnchangeableText if that would change something else, or nothing can be changed
   */
  StyleSnapshot with(StyleEntry entry, Optional<TomlValue> value) throws UnchangeableText {
    if (text.isEmpty()) {
      return this;
    }
    StyleText toml = text.get();
    List<String> path = path(entry, toml);
    StyleText changed = value.isPresent() ? toml.with(path, value.get()) : toml.without(path);
    return new StyleSnapshot(
        new StyleReader().read(changed.text(), StyleFile.NAME),
        Optional.of(changed),
        Optional.empty());
  }
}
