package io.github.readfall.strip.json;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonReadFeature;

/**
 * Reads JSON and remembers the place of every value. It follows RFC 8259, except that a number may
 * be {@code NaN} or {@code Infinity}: the reader that needs the number reports it, and the rest is
 * read.
 */
final class JsonSource {

  private final JsonParser parser;
  private final LayoutFindings faults;

  private JsonSource(JsonParser parser, LayoutFindings faults) {
    this.parser = parser;
    this.faults = faults;
  }

  /** The value of a text; empty if it is not JSON, which is then reported to {@code faults}. */
  static Optional<Json> read(String text, LayoutFindings faults) {
    if (text.isBlank()) {
      faults.error(
          "syntax", 0, "The file is empty.", "Delete it, or put back a version with something in.");
      return Optional.empty();
    }
    JsonFactory factory =
        JsonFactory.builder().enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS).build();
    try (JsonParser parser = factory.createParser(ObjectReadContext.empty(), text)) {
      return new JsonSource(parser, faults).whole();
    } catch (JacksonException e) {
      SyntaxFault.of(e, text).addTo(faults);
      return Optional.empty();
    }
  }

  private Optional<Json> whole() {
    Json value = value(parser.nextToken());
    if (parser.nextToken() == null) {
      return Optional.of(value);
    }
    faults.error(
        "syntax",
        offset(),
        "There is more after the end of the layout, so the file cannot be used.",
        "Delete everything after the closing bracket.");
    return Optional.empty();
  }

  private Json value(JsonToken token) {
    int offset = offset();
    return switch (token) {
      case START_OBJECT -> fields(offset);
      case START_ARRAY -> items(offset);
      case VALUE_STRING -> new Json.Words(offset, parser.getString());
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Json.Figure(offset, parser.getString());
      default -> new Json.Literal(offset, parser.getString());
    };
  }

  private Json items(int offset) {
    List<Json> items = new ArrayList<>();
    for (JsonToken t = parser.nextToken(); t != JsonToken.END_ARRAY; t = parser.nextToken()) {
      items.add(value(t));
    }
    return new Json.Items(offset, List.copyOf(items));
  }

  private Json fields(int offset) {
    List<Json.Member> members = new ArrayList<>();
    Set<String> names = new HashSet<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = parser.currentName();
      int at = offset();
      Json value = value(parser.nextToken());
      if (names.add(name)) {
        members.add(new Json.Member(name, at, value));
      } else {
        faults.error(
            "key-twice",
            at,
            "The key " + LayoutFindings.shown(name) + " is here twice; the first one counts.",
            "Keep one of the two.");
      }
    }
    return new Json.Fields(offset, List.copyOf(members));
  }

  private int offset() {
    return (int) parser.currentTokenLocation().getCharOffset();
  }
}
