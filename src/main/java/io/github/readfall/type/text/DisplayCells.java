package io.github.readfall.type.text;

import com.ibm.icu.lang.UCharacter;
import com.ibm.icu.lang.UProperty;
import com.ibm.icu.text.BreakIterator;
import com.ibm.icu.util.ULocale;

/**
 * Counts the cells of a terminal that a text takes (UAX #11, East Asian Width: wide letters take
 * two).
 */
public final class DisplayCells {

  private DisplayCells() {}

  /** Cells of a text, a grapheme cluster counted as its first letter. */
  public static int of(String text) {
    BreakIterator clusters = BreakIterator.getCharacterInstance(ULocale.ROOT);
    clusters.setText(text);
    int cells = 0;
    for (int at = clusters.first(); at < text.length(); at = clusters.next()) {
      cells += isWide(text.codePointAt(at)) ? 2 : 1;
    }
    return cells;
  }

  private static boolean isWide(int codePoint) {
    int width = UCharacter.getIntPropertyValue(codePoint, UProperty.EAST_ASIAN_WIDTH);
    return width == UCharacter.EastAsianWidth.WIDE || width == UCharacter.EastAsianWidth.FULLWIDTH;
  }
}
