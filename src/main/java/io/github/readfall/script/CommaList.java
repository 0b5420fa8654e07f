package io.github.readfall.script;

import java.util.ArrayList;
import java.util.List;

/** Lists with commas, western or full-width. */
public final class CommaList {

  private CommaList() {}

  /** The parts between commas that are outside brackets, stripped, without empty ones. */
  public static List<String> parts(String text) {
    List<String> parts = new ArrayList<>();
    int start = 0;
    int depth = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (Brackets.opens(c)) {
        depth++;
      } else if (Brackets.closes(c)) {
        depth = Math.max(0, depth - 1);
      } else if (depth == 0 && isComma(c)) {
        add(parts, text.substring(start, i));
        start = i + 1;
      }
    }
    add(parts, text.substring(start));
    return parts;
  }

  public static boolean isComma(int c) {
    return c == ',' || c == ';' || c == '\uFF0C' || c == '\u3001' || c == '\u060C';
  }

  private static void add(List<String> parts, String part) {
    String stripped = part.strip();
    if (!Letters.isBlank(stripped)) {
      parts.add(stripped);
    }
  }
}
