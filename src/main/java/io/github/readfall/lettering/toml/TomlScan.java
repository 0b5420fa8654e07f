package io.github.readfall.lettering.toml;

import java.util.ArrayList;
import java.util.List;
import org.tomlj.Toml;

/**
 * Finds keys and values in a text that is TOML (v1.0.0). The library tells the content of a text
 * and where each key begins, but not where a value ends.
 */
public final class TomlScan {

  private static final char END = 0; // a sign that no TOML has in it

  private final String text;
  private final List<TomlBlock> blocks = new ArrayList<>();

  private TomlScan(String text) {
    this.text = text;
  }

  /** The headers of a text with the entries below each, in their order. */
  public static List<TomlBlock> blocks(String text) {
    TomlScan scan = new TomlScan(text);
    int at = text.startsWith("\uFEFF") ? 1 : 0;
    at = scan.block(List.of(), false, at);
    while (at < text.length()) {
      at = scan.headed(at);
    }
    return scan.blocks;
  }

  /** Reads a header and its block; returns the start of the next. */
  private int headed(int header) {
    boolean list = at(header + 1) == '[';
    int keyStart = header + (list ? 2 : 1);
    int keyEnd = keyEnd(keyStart);
    int lineEnd = lineEnd(text, keyEnd);
    return block(key(keyStart, keyEnd), list, lineEnd);
  }

  private int block(List<String> path, boolean list, int bodyStart) {
    List<TomlEntry> entries = new ArrayList<>();
    int at = skipInvisible(bodyStart);
    while (at(at) != END && at(at) != '[') {
      TomlEntry entry = entry(path, at);
      entries.add(entry);
      at = skipInvisible(entry.valueEnd());
    }
    int end = at(at) == END ? text.length() : at;
    blocks.add(new TomlBlock(path, list, bodyStart, end, entries));
    return end;
  }

  private TomlEntry entry(List<String> table, int start) {
    int keyEnd = keyEnd(start);
    List<String> path = TomlEntry.joined(table, key(start, keyEnd));
    int valueStart = skipSpaces(skipSpaces(keyEnd) + 1); // after the equals sign
    if (at(valueStart) != '{') {
      return new TomlEntry(path, start, valueStart, valueEnd(valueStart), false, List.of());
    }
    List<TomlEntry> inner = new ArrayList<>();
    int at = skipInvisible(valueStart + 1);
    while (at(at) != '}' && at(at) != END) {
      TomlEntry entry = entry(path, at);
      inner.add(entry);
      at = skipComma(entry.valueEnd());
    }
    return new TomlEntry(path, start, valueStart, Math.min(at + 1, text.length()), true, inner);
  }

  private List<String> key(int start, int end) {
    return Toml.parseDottedKey(text.substring(start, end).strip());
  }

  /** The end of a key, with dots and quoted parts; spaces before the end may be included. */
  private int keyEnd(int from) {
    int at = from;
    while (at(at) != END && "=]\r\n".indexOf(at(at)) < 0) {
      at = at(at) == '"' || at(at) == '\'' ? quoteEnd(at) : at + 1;
    }
    return at;
  }

  private int valueEnd(int from) {
    return switch (at(from)) {
      case '"', '\'' -> quoteEnd(from);
      case '[' -> listEnd(from);
      case '{' -> entry(List.of(), from).valueEnd();
      default -> bareEnd(from);
    };
  }

  private int listEnd(int from) {
    int at = skipInvisible(from + 1);
    while (at(at) != ']' && at(at) != END) {
      at = skipComma(at(at) == '{' ? braceEnd(at) : Math.max(at + 1, valueEnd(at)));
    }
    return Math.min(at + 1, text.length());
  }

  /** The end of a table in braces that has no key of its own. */
  private int braceEnd(int from) {
    int at = skipInvisible(from + 1);
    while (at(at) != '}' && at(at) != END) {
      at = skipComma(entry(List.of(), at).valueEnd());
    }
    return Math.min(at + 1, text.length());
  }

  /** Numbers, dates, true and false: a date may have a space in it. */
  private int bareEnd(int from) {
    int at = from;
    while (at(at) != END && ",]}#\r\n".indexOf(at(at)) < 0) {
      at++;
    }
    while (at > from && isSpace(at(at - 1))) {
      at--;
    }
    return at;
  }

  private int quoteEnd(int from) {
    char quote = at(from);
    String three = String.valueOf(quote).repeat(3);
    boolean isLong = text.startsWith(three, from);
    int at = from + (isLong ? 3 : 1);
    while (at(at) != END && !(isLong ? text.startsWith(three, at) : at(at) == quote)) {
      at += quote == '"' && at(at) == '\\' ? 2 : 1;
    }
    at += isLong ? 3 : 1;
    for (int more = 0; isLong && more < 2 && at(at) == quote; more++) {
      at++; // one or two quotes may precede the three that end it
    }
    return Math.min(at, text.length());
  }

  private int skipComma(int from) {
    int at = skipInvisible(from);
    return at(at) == ',' ? skipInvisible(at + 1) : at;
  }

  /** Skips white space, line ends and notes. */
  private int skipInvisible(int from) {
    int at = from;
    while (isSpace(at(at)) || at(at) == '\r' || at(at) == '\n' || at(at) == '#') {
      at = at(at) == '#' ? lineEnd(text, at) : at + 1;
    }
    return at;
  }

  private int skipSpaces(int from) {
    int at = from;
    while (isSpace(at(at))) {
      at++;
    }
    return at;
  }

  private char at(int index) {
    return index < text.length() ? text.charAt(index) : END;
  }

  private static boolean isSpace(char c) {
    return c == ' ' || c == '\t';
  }

  /**
   * The place after the line end that follows a place; the end of the text if the line has none.
   */
  static int lineEnd(String text, int from) {
    int end = text.indexOf('\n', from);
    return end < 0 ? text.length() : end + 1;
  }

  /** The beginning of the line of a place. */
  static int lineStart(String text, int from) {
    int start = text.lastIndexOf('\n', from - 1) + 1;
    return start == 0 && text.startsWith("\uFEFF") ? 1 : start;
  }
}
