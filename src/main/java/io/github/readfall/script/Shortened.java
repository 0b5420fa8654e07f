package io.github.readfall.script;

/** What a person wrote, short enough to stand in a sentence. */
final class Shortened {

  private static final int MAX_CHARACTERS = 40;

  private Shortened() {}

  static String of(String written) {
    if (written.codePointCount(0, written.length()) <= MAX_CHARACTERS) {
      return written;
    }
    return written.substring(0, written.offsetByCodePoints(0, MAX_CHARACTERS - 1)) + "…";
  }
}
