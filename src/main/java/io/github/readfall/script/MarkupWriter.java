package io.github.readfall.script;

import java.util.List;

/** Writes a text with the script's markup: the reverse of {@link MarkupReader#text}. */
public final class MarkupWriter {

  private static final int STRONG = 1;
  private static final int SLANTED = 2;

  private MarkupWriter() {}

  /**
   * The raw text of a plain one. Emphasis that begins or ends within a word, which the markup
   * cannot express, takes in the whole word; plain signs are escaped only if necessary.
   *
   * @param plain a forced break is {@code '\n'}
   * @param spans its emphasised stretches, in order, none overlapping
   */
  public static String raw(String plain, List<Span> spans) {
    int[] looks = new int[plain.length()];
    mark(plain, spans, STRONG, looks);
    mark(plain, spans, SLANTED, looks);
    String wanted = collapsed(plain);
    String raw = written(plain, looks, false);
    boolean clear =
        MarkupReader.text(raw).plain().equals(wanted)
            && spans.isEmpty() == MarkupReader.text(raw).spans().isEmpty();
    return clear ? raw : written(plain, looks, true);
  }

  private static String collapsed(String plain) {
    return plain.replaceAll(" *\n *", "\n").replaceAll(" +", " ").strip();
  }

  /** Notes one sign for every letter that it emphasises, a stretch at a time. */
  private static void mark(String plain, List<Span> spans, int sign, int[] looks) {
    int start = -1;
    int end = -1;
    for (Span span : spans) {
      boolean has = (sign & look(span.emphasis())) != 0;
      if (has && span.start() != end) {
        mark(plain, start, end, sign, looks);
        start = span.start();
      }
      end = has ? span.end() : end;
    }
    mark(plain, start, end, sign, looks);
  }

  private static int look(Emphasis emphasis) {
    return switch (emphasis) {
      case STRONG -> STRONG;
      case SLANTED -> SLANTED;
      case STRONG_SLANTED -> STRONG | SLANTED;
    };
  }

  private static void mark(String plain, int from, int to, int sign, int[] looks) {
    int start = Math.max(0, from);
    int end = Math.max(start, to);
    while (start < end && Letters.isSpace(plain.charAt(start))) {
      start++;
    }
    while (end > start && Letters.isSpace(plain.charAt(end - 1))) {
      end--;
    }
    while (start > 0 && start < end && Letters.isCasedOrDigit(plain.codePointBefore(start))) {
      start--;
    }
    while (end < plain.length() && start < end && Letters.isCasedOrDigit(plain.codePointAt(end))) {
      end++;
    }
    for (int i = start; i < end; i++) {
      looks[i] |= sign;
    }
  }

  private static String written(String plain, int[] looks, boolean escaped) {
    StringBuilder raw = new StringBuilder(plain.length() + 8);
    int open = 0;
    for (int i = 0; i <= plain.length(); i++) {
      int look = i < plain.length() ? looks[i] : 0;
      boolean space = i < plain.length() && Letters.isSpace(plain.charAt(i));
      open = turned(raw, open, look, i < plain.length() && space);
      if (i < plain.length()) {
        letter(raw, plain.charAt(i), escaped);
      }
    }
    return raw.toString().replaceAll(" +", " ").strip();
  }

  /** Closes the signs that end here and opens those that begin; strong outside, slanted inside. */
  private static int turned(StringBuilder raw, int open, int look, boolean space) {
    int closing = open & ~look;
    int stay = open & look;
    if ((closing & 1) != 0) {
      closing = open; // the inner one closes first
      stay = 0;
    }
    raw.append((closing & 2) != 0 ? "_" : "").append((closing & 1) != 0 ? "*" : "");
    int opening = space ? 0 : look & ~stay;
    raw.append((opening & 1) != 0 ? "*" : "").append((opening & 2) != 0 ? "_" : "");
    return stay | opening;
  }

  private static void letter(StringBuilder raw, char c, boolean escaped) {
    if (c == '\n') {
      raw.append(" / ");
    } else {
      raw.append(escaped && "*_/".indexOf(c) >= 0 ? "\\" : "").append(c);
    }
  }
}
