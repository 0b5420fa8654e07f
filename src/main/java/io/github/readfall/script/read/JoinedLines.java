package io.github.readfall.script.read;

import io.github.readfall.script.Letters;
import java.util.List;

/**
 * Joins lines into one: with a space between them, but between letters of scripts that are written
 * without spaces with nothing (CSS Text Module Level 3, section 4.1.3).
 */
public final class JoinedLines {

  private JoinedLines() {}

  /** The lines as one. */
  public static String of(List<String> lines) {
    StringBuilder joined = new StringBuilder();
    for (String line : lines) {
      joined.append(gap(joined, line)).append(line);
    }
    return joined.toString();
  }

  /** The gap between two stretches of text; empty if one of them is. */
  public static String gap(CharSequence before, CharSequence after) {
    boolean isTight =
        before.isEmpty()
            || after.isEmpty()
            || (Letters.isWrittenWithoutSpaces(Character.codePointBefore(before, before.length()))
                && Letters.isWrittenWithoutSpaces(Character.codePointAt(after, 0)));
    return isTight ? "" : " ";
  }
}
