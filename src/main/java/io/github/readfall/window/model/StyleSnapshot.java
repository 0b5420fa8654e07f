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
 * @param read the style, and what its reader complains of
 * @param text it was read from, to be changed; empty where it cannot be
 * @param remark why it cannot be changed, in a sentence; empty where it can
 */
public record StyleSnapshot(ReadStyle read, Optional<StyleText> text, Optional<String> remark) {

  /** The style of a script that lies alone. */
  public static final StyleSnapshot BUILT_IN =
      new StyleSnapshot(
          new ReadStyle(HouseStyle.DEFAULT, List.of()), Optional.empty(), Optional.empty());

  /** What a series.toml says. */
  public static StyleSnapshot of(String toml) {
    ReadStyle read = new StyleReader().read(toml, StyleFile.NAME);
    try {
      return new StyleSnapshot(
          read, Optional.of(StyleText.of(toml, StyleFile.NAME)), Optional.empty());
    } catch (UnchangeableText e) {
      return new StyleSnapshot(read, Optional.empty(), Optional.ofNullable(e.getMessage()));
    }
  }

  /** Whether both come from the same words. */
  boolean isLike(StyleSnapshot other) {
    return read.equals(other.read)
        && remark.equals(other.remark)
        && text.map(StyleText::text).equals(other.text.map(StyleText::text));
  }

  public HouseStyle style() {
    return read.style();
  }

  /** Whether the series says something of it itself. */
  public boolean says(StyleEntry spot) {
    return text.filter(toml -> toml.says(path(spot, toml))).isPresent();
  }

  private List<String> path(StyleEntry spot, StyleText toml) {
    return spot.path(toml, style().keywords());
  }

  /** What the reader complains of where a value stands, in a sentence. */
  public Optional<String> complaint(StyleEntry spot) {
    return text.flatMap(toml -> toml.line(path(spot, toml)))
        .flatMap(line -> complaints(line).findFirst())
        .map(Finding::message);
  }

  private Stream<Finding> complaints(int line) {
    return read.findings().stream()
        .filter(finding -> finding.where().file().equals(StyleFile.NAME))
        .filter(finding -> finding.where().line().equals(OptionalInt.of(line)));
  }

  /**
   * The same with another value, or as built in.
   *
   * @throws UnchangeableText where that would change something else, or nothing can be changed
   */
  StyleSnapshot with(StyleEntry spot, Optional<TomlValue> value) throws UnchangeableText {
    if (text.isEmpty()) {
      return this;
    }
    StyleText toml = text.get();
    List<String> path = path(spot, toml);
    StyleText changed = value.isPresent() ? toml.with(path, value.get()) : toml.without(path);
    return new StyleSnapshot(
        new StyleReader().read(changed.text(), StyleFile.NAME),
        Optional.of(changed),
        Optional.empty());
  }
}
