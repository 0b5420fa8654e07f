package io.github.readfall.desk;

import io.github.readfall.finding.Finding;
import io.github.readfall.series.StyleFile;
import io.github.readfall.style.HouseStyle;
import io.github.readfall.style.ReadStyle;
import io.github.readfall.style.StyleReader;
import io.github.readfall.style.StyleText;
import io.github.readfall.style.StyleValue;
import io.github.readfall.style.UnchangeableText;
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
public record ShownStyle(ReadStyle read, Optional<StyleText> text, Optional<String> remark) {

  /** The style of a script that lies alone. */
  public static final ShownStyle BUILT_IN =
      new ShownStyle(
          new ReadStyle(HouseStyle.DEFAULT, List.of()), Optional.empty(), Optional.empty());

  /** What a series.toml says. */
  static ShownStyle of(String toml) {
    ReadStyle read = new StyleReader().read(toml, StyleFile.NAME);
    try {
      return new ShownStyle(
          read, Optional.of(StyleText.of(toml, StyleFile.NAME)), Optional.empty());
    } catch (UnchangeableText e) {
      return new ShownStyle(read, Optional.empty(), Optional.ofNullable(e.getMessage()));
    }
  }

  /** Whether both come from the same words. */
  boolean isLike(ShownStyle other) {
    return read.equals(other.read)
        && remark.equals(other.remark)
        && text.map(StyleText::text).equals(other.text.map(StyleText::text));
  }

  public HouseStyle style() {
    return read.style();
  }

  /** Whether the series says something of it itself. */
  public boolean says(StyleSpot spot) {
    return text.filter(toml -> toml.says(path(spot, toml))).isPresent();
  }

  private List<String> path(StyleSpot spot, StyleText toml) {
    return spot.path(toml, style().keywords());
  }

  /** What the reader complains of where a value stands, in a sentence. */
  public Optional<String> complaint(StyleSpot spot) {
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
  ShownStyle with(StyleSpot spot, Optional<StyleValue> value) throws UnchangeableText {
    if (text.isEmpty()) {
      return this;
    }
    StyleText toml = text.get();
    List<String> path = path(spot, toml);
    StyleText changed = value.isPresent() ? toml.with(path, value.get()) : toml.without(path);
    return new ShownStyle(
        new StyleReader().read(changed.text(), StyleFile.NAME),
        Optional.of(changed),
        Optional.empty());
  }
}
