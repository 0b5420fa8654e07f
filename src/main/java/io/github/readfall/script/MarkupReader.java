package io.github.readfall.script;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Reads {@code *strong*}, {@code _slanted_}, {@code / } (a forced break) and the escapes of a raw
 * text, once from left to right.
 *
 * <p>A sign opens if it follows no letter or digit and white space does not follow it; it closes if
 * it follows no white space and no letter or digit follows it. So {@code snake_case} and {@code 2 *
 * 3} stay as they are. Letters of scripts without capitals may touch a sign, since many of them are
 * written without spaces.
 */
public final class MarkupReader {

  /**
   * The content of a raw text.
   *
   * @param text its words
   * @param unclosed indexes in the raw text of signs that open and are not closed
   */
  public record Markup(CueText text, List<Integer> unclosed) {}

  private MarkupReader() {}

  /** Reads the words of a raw text; a sign that is not closed is kept as text. */
  public static CueText text(String raw) {
    return read(raw).text();
  }

  public static Markup read(String raw) {
    Signs signs = Signs.of(raw);
    return new Markup(write(raw, signs), signs.unclosed());
  }

  /** The stretches of a raw text, adjacent ones of one kind as one. */
  public static List<LinePart> parts(String raw) {
    List<LinePart> parts = new ArrayList<>();
    walk(raw, Signs.of(raw), (kind, start, end, strong, slanted) -> add(parts, kind, start, end));
    return parts;
  }

  private static void add(List<LinePart> parts, PartKind kind, int start, int end) {
    int last = parts.size() - 1;
    if (last >= 0 && parts.get(last).kind() == kind && kind != PartKind.BREAK) {
      parts.set(last, new LinePart(kind, parts.get(last).start(), end));
    } else {
      parts.add(new LinePart(kind, start, end));
    }
  }

  private static CueText write(String raw, Signs signs) {
    PlainText plain = new PlainText();
    walk(
        raw,
        signs,
        (kind, start, end, strong, slanted) -> {
          if (kind == PartKind.BREAK) {
            plain.breakLine(strong, slanted);
          } else if (kind != PartKind.SIGN) {
            plain.add(
                raw.codePointAt(kind == PartKind.ESCAPE ? start + 1 : start), strong, slanted);
          }
        });
    return plain.text(raw);
  }

  /** Takes a raw text sign by sign. */
  private interface Piece {
    void take(PartKind kind, int start, int end, boolean strong, boolean slanted);
  }

  private static void walk(String raw, Signs signs, Piece piece) {
    boolean strong = false;
    boolean slanted = false;
    for (int i = 0; i < raw.length(); ) {
      boolean escape = isEscape(raw, i);
      int c = raw.codePointAt(escape ? i + 1 : i);
      int end = i + (escape || signs.isDoubled(i) ? 2 : Character.charCount(c));
      PartKind kind = escape ? PartKind.ESCAPE : PartKind.words(strong, slanted);
      if (signs.isMarkup(i)) {
        strong ^= c == '*';
        slanted ^= c == '_';
        kind = PartKind.SIGN;
      } else if (isBreak(raw, i)) {
        kind = PartKind.BREAK;
      }
      piece.take(kind, i, end, strong, slanted);
      i = end;
    }
  }

  static boolean isEscape(String raw, int i) {
    return raw.charAt(i) == '\\' && i + 1 < raw.length() && "*_/".indexOf(raw.charAt(i + 1)) >= 0;
  }

  private static boolean isBreak(String raw, int i) {
    return raw.charAt(i) == '/'
        && (i == 0 || Letters.isSpace(raw.charAt(i - 1)))
        && (i + 1 == raw.length() || Letters.isSpace(raw.charAt(i + 1)));
  }

  /** The signs of a raw text that are markup. */
  private record Signs(BitSet markup, BitSet doubled, List<Integer> unclosed) {

    static Signs of(String raw) {
      BitSet markup = new BitSet();
      BitSet doubled = new BitSet();
      List<Integer> unclosed = new ArrayList<>();
      int strong = -1;
      int slanted = -1;
      for (int i = 0; i < raw.length(); ) {
        char c = raw.charAt(i);
        int length = isEscape(raw, i) ? 2 : 1;
        if (c == '*' || c == '_') {
          length = runLength(raw, i);
          int open = c == '*' ? strong : slanted;
          if (open >= 0 && closes(raw, i, length) && i > open + runLength(raw, open)) {
            mark(raw, open, markup, doubled);
            mark(raw, i, markup, doubled);
            open = -1;
          } else if (opens(raw, i, length)) {
            addIfOpen(open, unclosed);
            open = i;
          }
          strong = c == '*' ? open : strong;
          slanted = c == '_' ? open : slanted;
        }
        i += length;
      }
      addIfOpen(strong, unclosed);
      addIfOpen(slanted, unclosed);
      return new Signs(markup, doubled, unclosed.stream().sorted().toList());
    }

    private static void addIfOpen(int open, List<Integer> unclosed) {
      if (open >= 0) {
        unclosed.add(open);
      }
    }

    private static void mark(String raw, int at, BitSet markup, BitSet doubled) {
      markup.set(at);
      doubled.set(at, runLength(raw, at) == 2);
    }

    boolean isMarkup(int i) {
      return markup.get(i);
    }

    boolean isDoubled(int i) {
      return doubled.get(i);
    }

    /**
     * The length of a run of signs. One and two mean the same; three or more are drawn as they are.
     */
    private static int runLength(String raw, int start) {
      int end = start + 1;
      while (end < raw.length() && raw.charAt(end) == raw.charAt(start)) {
        end++;
      }
      return end - start;
    }

    private static boolean opens(String raw, int start, int length) {
      int end = start + length;
      return length <= 2
          && end < raw.length()
          && !Letters.isSpace(raw.charAt(end))
          && !isWordBefore(raw, start);
    }

    private static boolean closes(String raw, int start, int length) {
      int end = start + length;
      return length <= 2
          && start > 0
          && !Letters.isSpace(raw.charAt(start - 1))
          && (end == raw.length() || !Letters.isCasedOrDigit(raw.codePointAt(end)));
    }

    private static boolean isWordBefore(String raw, int start) {
      int i = start;
      while (i > 0 && Letters.isMark(raw.codePointBefore(i))) {
        i -= Character.charCount(raw.codePointBefore(i));
      }
      return i > 0 && Letters.isCasedOrDigit(raw.codePointBefore(i));
    }
  }
}
