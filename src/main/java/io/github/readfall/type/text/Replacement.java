package io.github.readfall.type.text;

import com.ibm.icu.text.Edits;
import java.util.Comparator;
import java.util.List;

/**
 * A stretch of a text that is lettered with other characters.
 *
 * @param start first UTF-16 unit
 * @param end one past the last
 * @param with what is lettered in its place
 */
record Replacement(int start, int end, String with) {

  /** A text with stretches replaced, none of which overlap. */
  static Typography in(String text, List<Replacement> replacements) {
    if (replacements.isEmpty()) {
      return Typography.unchanged(text);
    }
    Edits edits = new Edits();
    StringBuilder lettered = new StringBuilder();
    int at = 0;
    for (Replacement each : sorted(replacements)) {
      lettered.append(text, at, each.start).append(each.with);
      edits.addUnchanged(each.start - at);
      edits.addReplace(each.end - each.start, each.with.length());
      at = each.end;
    }
    lettered.append(text, at, text.length());
    edits.addUnchanged(text.length() - at);
    return new Typography(
        lettered.toString(), i -> edits.getFineIterator().destinationIndexFromSourceIndex(i));
  }

  private static List<Replacement> sorted(List<Replacement> replacements) {
    return replacements.stream().sorted(Comparator.comparingInt(Replacement::start)).toList();
  }
}
