package io.github.readfall.export.pdf;

import io.github.readfall.draw.Mark;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds the text of a line in reading order while its runs are in visual order: in Arabic with a
 * number in it they differ.
 */
final class LogicalOrder {

  private LogicalOrder() {}

  /**
   * The text of a line.
   *
   * @param runs of the line, from the left
   * @param all text that the line is part of, in the order of reading
   */
  static String of(List<Mark.Glyphs> runs, String all) {
    List<String> texts = runs.stream().map(mark -> mark.run().text()).toList();
    for (int at = 0; at < all.length(); at++) {
      List<String> found = matched(all, at, texts);
      if (!found.isEmpty()) {
        return String.join("", found);
      }
    }
    return String.join("", texts);
  }

  /** The texts in an order in which they are found at a place; empty if there is none. */
  private static List<String> matched(String all, int at, List<String> texts) {
    for (int i = 0; i < texts.size(); i++) {
      String text = texts.get(i);
      if (all.startsWith(text, at)) {
        List<String> rest = new ArrayList<>(texts);
        rest.remove(i);
        List<String> found = new ArrayList<>(List.of(text));
        if (rest.isEmpty()) {
          return found;
        }
        List<String> others = matched(all, at + text.length(), rest);
        if (!others.isEmpty()) {
          found.addAll(others);
          return found;
        }
      }
    }
    return List.of();
  }
}
