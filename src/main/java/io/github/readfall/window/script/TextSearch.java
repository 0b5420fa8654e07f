package io.github.readfall.window.script;

import java.util.ArrayList;
import java.util.List;

/**
 * A search in a text.
 *
 * @param wanted as typed
 * @param matchCase whether capitals and small letters differ
 * @param wholeWords whether no letter or digit may be right before or after a match
 */
record TextSearch(String wanted, boolean matchCase, boolean wholeWords) {

  static final TextSearch NOTHING = new TextSearch("", false, false);

  /** All matches from the beginning on, none overlapping. */
  List<TextRange> in(String text) {
    List<TextRange> found = new ArrayList<>();
    int last = text.length() - wanted.length();
    for (int i = 0; i <= last && !wanted.isEmpty(); i++) {
      if (isAt(text, i)) {
        found.add(new TextRange(i, i + wanted.length()));
        i += wanted.length() - 1;
      }
    }
    return found;
  }

  /** The text with every match replaced. */
  String replacedIn(String text, String by) {
    StringBuilder replaced = new StringBuilder();
    int from = 0;
    for (TextRange range : in(text)) {
      replaced.append(text, from, range.start()).append(by);
      from = range.end();
    }
    return replaced.append(text.substring(from)).toString();
  }

  private boolean isAt(String text, int index) {
    int end = index + wanted.length();
    return text.regionMatches(!matchCase, index, wanted, 0, wanted.length())
        && (!wholeWords || (isEdge(text, index) && isEdge(text, end)));
  }

  /** Whether a word ends or begins at a position. */
  private static boolean isEdge(String text, int index) {
    return index == 0
        || index == text.length()
        || !Character.isLetterOrDigit(text.codePointBefore(index))
        || !Character.isLetterOrDigit(text.codePointAt(index));
  }
}
