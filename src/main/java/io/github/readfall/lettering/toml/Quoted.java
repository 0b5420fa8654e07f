package io.github.readfall.lettering.toml;

import java.util.List;
import java.util.stream.Collectors;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;

/** Quotes what a person wrote in a sentence about it: short and on one line. */
public final class Quoted {

  private static final int LONGEST = 40; // code points

  private Quoted() {}

  /** A value. */
  public static String value(Object value) {
    if (value instanceof String text) {
      return ValueKind.quoted(name(text));
    }
    if (value instanceof Number number) {
      return ValueKind.plain(number.doubleValue());
    }
    if (value instanceof TomlTable) {
      return "a table";
    }
    return value instanceof TomlArray ? "a list" : value.toString();
  }

  /** A name, without quotes. */
  static String name(String name) {
    String line = name.replaceAll("\\p{Cntrl}", " ");
    if (line.codePointCount(0, line.length()) <= LONGEST) {
      return line;
    }
    return line.substring(0, line.offsetByCodePoints(0, LONGEST)) + "…";
  }

  /** A sentence of the TOML reader's, which may quote the person. */
  static String sentence(String sentence) {
    return sentence.replaceAll("\\p{Cntrl}", " ");
  }

  /** A key as TOML needs it: quoted unless it has only plain letters, digits, - and _. */
  public static String key(String name) {
    return name.matches("[A-Za-z0-9_-]+")
        ? name(name)
        : ValueKind.quoted(name(name).replace("\\", "\\\\").replace("\"", "\\\""));
  }

  /** A header, e.g. {@code [voices."OLD WOUTER"]}. */
  public static String header(List<String> path) {
    return path.stream().map(Quoted::key).collect(Collectors.joining(".", "[", "]"));
  }
}
