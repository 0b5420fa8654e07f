package io.github.readfall.lettering.toml;

import java.util.Locale;

/** A value of series.toml. */
public sealed interface TomlValue {

  /** The value as written in TOML. */
  String toml();

  /** The value as a person reads it: without quotes. */
  public String shown();

  /** A number, of whatever unit its key has. */
  record Figure(double number) implements TomlValue {
    @Override
    public String toml() {
      return ValueKind.plain(number);
    }

    @Override
    public String shown() {
      return toml();
    }
  }

  /** Yes or no. */
  record Truth(boolean isSo) implements TomlValue {
    @Override
    public String toml() {
      return Boolean.toString(isSo);
    }

    @Override
    public String shown() {
      return toml();
    }
  }

  /** A text: a face, a colour, or one of a few words. */
  record Words(String words) implements TomlValue {
    @Override
    public String toml() {
      return quoted(words);
    }

    @Override
    public String shown() {
      return words;
    }
  }

  /** A key as written in TOML: quoted unless it has only plain letters, digits, - and _. */
  static String key(String name) {
    return name.matches("[A-Za-z0-9_-]+") ? name : quoted(name);
  }

  private static String quoted(String words) {
    StringBuilder quoted = new StringBuilder("\"");
    words
        .chars()
        .forEach(
            c -> {
              if (c == '"' || c == '\\') {
                quoted.append('\\').append((char) c);
              } else if (c < ' ' || c == 0x7f) {
                quoted.append(String.format(Locale.ROOT, "\\u%04x", c));
              } else {
                quoted.append((char) c);
              }
            });
    return quoted.append('"').toString();
  }
}
