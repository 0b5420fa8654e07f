package io.github.readfall.strip.json;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** A value of layout.json, and its offset in the text (in UTF-16 units from 0). */
sealed interface Json {

  int offset();

  /** The value as JSON, on one line. */
  String text();

  /** One {@code "name": value} of an object. */
  record Member(String name, int offset, Json value) {}

  /** An object; a name that comes twice is in it once. */
  record Fields(int offset, List<Member> members) implements Json {

    Optional<Json> get(String name) {
      return members.stream().filter(m -> m.name().equals(name)).map(Member::value).findFirst();
    }

    @Override
    public String text() {
      return members.stream()
          .map(m -> quoted(m.name()) + ": " + m.value().text())
          .collect(Collectors.joining(", ", "{", "}"));
    }
  }

  /** An array. */
  record Items(int offset, List<Json> items) implements Json {
    @Override
    public String text() {
      return items.stream().map(Json::text).collect(Collectors.joining(", ", "[", "]"));
    }
  }

  /** A text in double quotes. */
  record Words(int offset, String value) implements Json {
    @Override
    public String text() {
      return quoted(value);
    }
  }

  /**
   * A number.
   *
   * @param written as in the file
   */
  record Figure(int offset, String written) implements Json {

    /** Its value; not finite if it is too large for a double or is written {@code NaN}. */
    double value() {
      try {
        return Double.parseDouble(written);
      } catch (NumberFormatException e) {
        return Double.NaN; // one of the words for infinity
      }
    }

    @Override
    public String text() {
      return Double.isNaN(value()) || written.endsWith("y") ? "null" : written;
    }
  }

  /** {@code true}, {@code false} or {@code null}. */
  record Literal(int offset, String text) implements Json {}

  /** A text in double quotes, with escapes if JSON or UTF-8 needs them. */
  static String quoted(String text) {
    StringBuilder quoted = new StringBuilder(text.length() + 2).append('"');
    text.codePoints()
        .forEach(
            c -> {
              boolean half = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
              if (c == '"' || c == '\\') {
                quoted.append('\\').append((char) c);
              } else if (c < ' ' || half) {
                String hex = Integer.toHexString(c);
                quoted.append("\\u").append("0".repeat(4 - hex.length())).append(hex);
              } else {
                quoted.appendCodePoint(c);
              }
            });
    return quoted.append('"').toString();
  }
}
