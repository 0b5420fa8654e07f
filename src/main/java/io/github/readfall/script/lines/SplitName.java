package io.github.readfall.script.lines;

import io.github.readfall.script.CommaList;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Letters;
import java.util.List;
import java.util.Set;

/**
 * A name without the manners that are written beside it without brackets: {@code MARA V.O.} and
 * {@code MARA, whispering}.
 *
 * @param name without format characters, white space collapsed
 * @param length of it as written, in UTF-16 units
 * @param manners as written
 */
record SplitName(String name, int length, List<String> manners) {

  /** Abbreviations that need no comma, in small letters. Common practice. */
  private static final Set<String> ABBREVIATIONS =
      Set.of(
          "v.o.",
          "v.o",
          "v/o",
          "o.s.",
          "o.s",
          "o/s",
          "o.p.",
          "o.p",
          "o.c.",
          "o.c",
          "cont'd",
          "cont\u2019d",
          "contd",
          "cont.");

  static SplitName of(String written, Keywords keywords) {
    int end = Letters.trimEnd(written, 0, written.length());
    int comma = firstComma(written);
    List<String> after = comma < 0 ? List.of() : CommaList.parts(written.substring(comma + 1));
    if (!after.isEmpty() && after.stream().allMatch(word -> keywords.manner(word).isKnown())) {
      return split(written, comma, after);
    }
    int space = end - 1;
    while (space > 0 && !Letters.isSpace(written.charAt(space))) {
      space--;
    }
    String last = written.substring(Math.max(0, space), end).strip();
    return space > 0 && ABBREVIATIONS.contains(Letters.fold(last))
        ? split(written, space, List.of(last))
        : split(written, end, List.of());
  }

  private static SplitName split(String written, int end, List<String> manners) {
    int length = Letters.trimEnd(written, 0, end);
    return new SplitName(Letters.collapse(written.substring(0, length)), length, manners);
  }

  private static int firstComma(String text) {
    int i = 0;
    while (i < text.length() && !CommaList.isComma(text.charAt(i))) {
      i++;
    }
    return i < text.length() ? i : -1;
  }
}
