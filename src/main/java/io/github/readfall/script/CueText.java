package io.github.readfall.script;

import java.util.List;

/**
 * The words of a cue.
 *
 * @param raw as written in the script, lines joined by single spaces (by nothing between two
 *     letters of a script that is written without spaces)
 * @param plain as lettered: without markup, white space collapsed, a forced break as {@code '\n'}
 * @param spans the emphasised stretches of {@code plain}, in order, none overlapping
 */
public record CueText(String raw, String plain, List<Span> spans) {

  /**
   * The most words of a cue that is lettered. House default, no source: a hundred times what a
   * crowded balloon holds.
   */
  public static final int MAX_WORDS = 2_000;

  /** The most characters (code points) of a cue that is lettered. House default, no source. */
  public static final int MAX_CHARACTERS = 20_000;

  public CueText {
    spans = List.copyOf(spans);
  }

  /** The number of words, as separated by white space. */
  public int words() {
    int words = 0;
    boolean inWord = false;
    for (int i = 0; i < plain.length(); i++) {
      boolean letter = !Character.isWhitespace(plain.charAt(i));
      words += letter && !inWord ? 1 : 0;
      inWord = letter;
    }
    return words;
  }

  /** The number of characters, in code points. */
  public int characters() {
    return plain.codePointCount(0, plain.length());
  }

  /** Returns true if it is too long to be lettered at all. */
  public boolean isTooLong() {
    return characters() > MAX_CHARACTERS || words() > MAX_WORDS;
  }
}
