package io.github.readfall.script.lines;

import io.github.readfall.script.Letters;
import java.util.ArrayList;
import java.util.List;

/**
 * A line before its kind is known.
 *
 * @param text without its ending
 * @param ending the characters that end it; empty for a last line that is not ended
 */
public record RawLine(String text, String ending) {

  /**
   * Parts a text at CR LF, LF, CR, NEL and the line and paragraph separators (The Unicode Standard,
   * section 5.8, Newline Guidelines).
   */
  static List<RawLine> split(String text, int from) {
    List<RawLine> lines = new ArrayList<>();
    int start = from;
    for (int i = from; i < text.length(); i++) {
      if (endsLine(text.charAt(i))) {
        int end = i;
        i += text.charAt(i) == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n' ? 1 : 0;
        lines.add(new RawLine(text.substring(start, end), text.substring(end, i + 1)));
        start = i + 1;
      }
    }
    if (start < text.length()) {
      lines.add(new RawLine(text.substring(start), ""));
    }
    return lines;
  }

  public static boolean endsLine(char c) {
    return c == '\n' || c == '\r' || c == '\u0085' || c == '\u2028' || c == '\u2029';
  }

  /** Index of the first visible character; the length if there is none. */
  public int start() {
    return Letters.skipInvisible(text, 0, text.length());
  }

  boolean isBlank() {
    return start() == text.length();
  }

  public boolean isNote() {
    return text.startsWith("//", start());
  }

  /**
   * The end of the words: before white space at the end, and before a note that ends the line,
   * which begins with {@code //} between white space (so that {@code http://} begins none).
   */
  public int end() {
    int slashes = text.indexOf("//");
    while (slashes >= 0 && !isNoteSign(slashes)) {
      slashes = text.indexOf("//", slashes + 2);
    }
    return Letters.trimEnd(text, 0, slashes < 0 ? text.length() : slashes);
  }

  private boolean isNoteSign(int slashes) {
    int after = slashes + 2;
    return (slashes == 0 || Letters.isSpace(text.charAt(slashes - 1)))
        && (after == text.length() || Letters.isSpace(text.charAt(after)));
  }

  /** Column of a place in the line, in code points from 1. */
  public int column(int index) {
    return text.codePointCount(0, Math.min(index, text.length())) + 1;
  }
}
