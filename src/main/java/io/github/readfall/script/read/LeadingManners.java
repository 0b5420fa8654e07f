package io.github.readfall.script.read;

import io.github.readfall.script.Brackets;
import io.github.readfall.script.CommaList;
import io.github.readfall.script.Keywords;
import java.util.List;

/**
 * Manners in brackets before the words of a cue, after the colon or on a line of their own: {@code
 * MARA: (quietly) Hush.}
 *
 * @param words as written; empty if the words begin with no bracket of known manners
 * @param end index of the words after them in the raw text
 */
public record LeadingManners(List<String> words, int end) {

  private static final LeadingManners NONE = new LeadingManners(List.of(), 0);

  /** Finds them in the raw text of a cue. */
  public static LeadingManners of(String raw, Keywords keywords) {
    int close = raw.isEmpty() || !Brackets.opens(raw.charAt(0)) ? -1 : closing(raw);
    if (close < 0) {
      return NONE;
    }
    List<String> words = CommaList.parts(raw.substring(1, close));
    boolean known = words.stream().allMatch(word -> keywords.manner(word).isKnown());
    int end = close + 1;
    while (end < raw.length() && Character.isWhitespace(raw.charAt(end))) {
      end++;
    }
    return known && !words.isEmpty() ? new LeadingManners(words, end) : NONE;
  }

  private static int closing(String text) {
    int i = 1;
    while (i < text.length() && !Brackets.closes(text.charAt(i))) {
      i++;
    }
    return i == text.length() ? -1 : i;
  }
}
