package io.github.readfall.lettering.toml;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.tomlj.Toml;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/**
 * Reads TOML line by line as far as possible: a faulty line is reported and left out, and after a
 * faulty header everything below it, lest its keys land in another table.
 */
public final class TolerantToml {

  static final int LONGEST = 1 << 16; // characters; a house style of a hundred voices has 20 000
  private static final int DEEPEST = 64; // more nested brackets than two mean nothing
  private static final int MOST_ERRORS = 200; // with more it is not TOML at all
  private static final int ROUNDS = 20; // taking out one fault can bring another to light

  private final StyleFindings complaints;
  private final List<String> lines;
  private final Set<Integer> complainedOf = new HashSet<>();

  private TolerantToml(String toml, StyleFindings complaints) {
    this.complaints = complaints;
    this.lines = new ArrayList<>(Arrays.asList(toml.split("\r?\n", -1)));
  }

  /** The part that can be read; empty if next to nothing can. */
  public static TomlTable read(String toml, StyleFindings complaints) {
    if (toml.length() > LONGEST) {
      return nothing(
          complaints,
          "This file is far longer than a house style: " + toml.length() + " characters");
    }
    if (depth(toml) > DEEPEST) {
      return nothing(
          complaints, "This file has more than " + DEEPEST + " brackets inside brackets");
    }
    return new TolerantToml(clean(toml), complaints).read();
  }

  private TomlTable read() {
    for (int round = 0; round < ROUNDS; round++) {
      List<TomlParseError> errors;
      try {
        TomlParseResult result = Toml.parse(String.join("\n", lines));
        if (!result.hasErrors()) {
          return result;
        }
        errors = result.errors();
      } catch (TomlParseError e) { // thrown, not listed, for a wrong escape in a key
        errors = List.of(e);
      }
      if (errors.size() > MOST_ERRORS) {
        break;
      }
      errors.forEach(this::complain);
      errors.forEach(error -> leaveOut(indexOf(error)));
    }
    return nothing(complaints, "Too much of this file cannot be read");
  }

  private void complain(TomlParseError error) {
    int index = indexOf(error);
    String line = lines.get(index);
    if (line.isBlank() || !complainedOf.add(index)) {
      return; // what follows from a fault already named
    }
    boolean samePlace = error.position().line() == index + 1;
    TomlPosition at = samePlace ? error.position() : TomlPosition.positionAt(index + 1, 1);
    complaints.add(StyleFindings.SYNTAX, at, sentence(error, at, line), () -> advice(error, line));
  }

  private static String sentence(TomlParseError error, TomlPosition at, String line) {
    String ignored = isHeader(line) ? "it and the keys below it are ignored" : "it is ignored";
    String message = reason(error);
    if (!message.startsWith("unexpected")) {
      return "This line cannot be used, so " + ignored + ": " + Quoted.sentence(message) + ".";
    }
    String from = at.column() == 1 ? "This line" : "From column " + at.column() + " on this line";
    return from + " cannot be read, so " + ignored + ".";
  }

  private static String advice(TomlParseError error, String line) {
    return reason(error).contains("previously defined")
        ? "Keep one of the two."
        : SyntaxFix.advice(line);
  }

  private static String reason(TomlParseError error) {
    String message = String.valueOf(error.getMessage());
    return message.isEmpty()
        ? "unexpected text"
        : message.substring(0, 1).toLowerCase(Locale.ROOT) + message.substring(1);
  }

  /** The faulty line, or the last one above it that has something in it. */
  private int indexOf(TomlParseError error) {
    int index = Math.max(0, Math.min(error.position().line(), lines.size()) - 1);
    while (index > 0 && lines.get(index).isBlank()) {
      index--;
    }
    return index;
  }

  private void leaveOut(int index) {
    boolean header = isHeader(lines.get(index));
    lines.set(index, "");
    for (int i = index + 1; header && i < lines.size() && !isHeader(lines.get(i)); i++) {
      lines.set(i, "");
    }
  }

  private static boolean isHeader(String line) {
    return line.stripLeading().startsWith("[");
  }

  private static TomlTable nothing(StyleFindings complaints, String why) {
    complaints.add(
        StyleFindings.SYNTAX,
        TomlPosition.positionAt(1, 1),
        why + ", so the built-in house style is used.",
        () -> "Begin again from the series.toml of a new series.");
    return Toml.parse("");
  }

  /** The depth of nested brackets, with those in texts and comments. */
  private static int depth(String toml) {
    int depth = 0;
    int deepest = 0;
    for (int i = 0; i < toml.length(); i++) {
      char c = toml.charAt(i);
      depth = Math.max(0, depth + (c == '[' || c == '{' ? 1 : c == ']' || c == '}' ? -1 : 0));
      deepest = Math.max(deepest, depth);
    }
    return deepest;
  }

  /** Without byte-order mark, and with a sign for every half character. */
  private static String clean(String toml) {
    String text = toml.startsWith("\uFEFF") ? toml.substring(1) : toml;
    return text.codePoints()
        .map(c -> c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE ? 0xFFFD : c)
        .mapToObj(Character::toString)
        .collect(Collectors.joining());
  }
}
