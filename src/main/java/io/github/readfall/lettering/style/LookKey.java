package io.github.readfall.lettering.style;

import io.github.readfall.base.viewing.Colour;
import io.github.readfall.lettering.toml.Range;
import io.github.readfall.lettering.toml.TomlValue;
import io.github.readfall.lettering.toml.TomlValue.Figure;
import io.github.readfall.lettering.toml.TomlValue.Truth;
import io.github.readfall.lettering.toml.TomlValue.Words;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** The keys of a voice or a manner in series.toml, in the order in which they are offered. */
public enum LookKey {
  SIZE(Kind.NUMBER),
  FACE(Kind.FACE),
  WEIGHT(Kind.NUMBER),
  ITALIC(Kind.TRUTH),
  SLANT(Kind.NUMBER),
  CAPITALS(Kind.TRUTH),
  TRACKING(Kind.NUMBER),
  SHAPE(Kind.WORD),
  LINE_STYLE(Kind.WORD),
  FILL(Kind.COLOUR),
  TEXT(Kind.COLOUR),
  LINE(Kind.COLOUR);

  /** The kinds of value. */
  public enum Kind {
    NUMBER,
    TRUTH,
    FACE,
    COLOUR,
    WORD
  }

  private final Kind kind;

  LookKey(Kind kind) {
    this.kind = kind;
  }

  public Kind kind() {
    return kind;
  }

  /** The key in the file, e.g. {@code line-style}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** One sentence for the person, with the unit. */
  public String meaning() {
    return key().meaning();
  }

  /** The numbers it can be; empty where it is none. */
  public Optional<Range> range() {
    return key().kind().range();
  }

  /** The words it can be; none where it is not one of a few. */
  public List<String> words() {
    return key().kind().words();
  }

  private Key<?> key() {
    return Sections.VOICES.keys().stream()
        .filter(key -> key.name().equals(word()))
        .findFirst()
        .orElseThrow();
  }

  /** The value in a voice or manner; empty if it has none. */
  public Optional<TomlValue> of(LookChange change) {
    return switch (this) {
      case SIZE -> figure(change.size());
      case FACE -> change.face().map(Words::new);
      case WEIGHT -> change.weight().stream().mapToObj(Figure::new).findFirst().map(v -> v);
      case ITALIC -> change.italic().map(Truth::new);
      case SLANT -> figure(change.slantDeg());
      case CAPITALS -> change.capitals().map(Truth::new);
      case TRACKING -> figure(change.tracking());
      case SHAPE -> change.shape().map(shape -> new Words(shape.word()));
      case LINE_STYLE -> change.lineStyle().map(style -> new Words(style.word()));
      case FILL -> colour(change.fill());
      case TEXT -> colour(change.text());
      case LINE -> colour(change.line());
    };
  }

  /** The value in a look; empty if the face decides, or for the default face. */
  public Optional<TomlValue> of(Look look) {
    return switch (this) {
      case SIZE -> Optional.of(new Figure(look.size()));
      case FACE -> look.face().map(Words::new);
      case WEIGHT -> Optional.of(new Figure(look.weight()));
      case ITALIC -> Optional.of(new Truth(look.italic()));
      case SLANT -> Optional.of(new Figure(look.slantDeg()));
      case CAPITALS -> look.capitals().map(Truth::new);
      case TRACKING -> Optional.of(new Figure(look.tracking()));
      case SHAPE -> Optional.of(new Words(look.shape().word()));
      case LINE_STYLE -> Optional.of(new Words(look.lineStyle().word()));
      case FILL -> colour(Optional.of(look.fill()));
      case TEXT -> colour(Optional.of(look.text()));
      case LINE -> colour(Optional.of(look.line()));
    };
  }

  private static Optional<TomlValue> figure(OptionalDouble number) {
    return number.stream().mapToObj(Figure::new).findFirst().map(value -> value);
  }

  private static Optional<TomlValue> colour(Optional<Colour> colour) {
    return colour.map(value -> new Words(value.hex()));
  }
}
