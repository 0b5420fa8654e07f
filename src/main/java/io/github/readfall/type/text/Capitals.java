package io.github.readfall.type.text;

import com.ibm.icu.text.CaseMap;
import com.ibm.icu.text.Edits;
import java.util.function.IntUnaryOperator;

/**
 * Text put into capitals by its language's rules: ß becomes SS, Turkish i becomes İ, Greek accents
 * are dropped. Capitals can be longer or shorter than the original.
 *
 * @param text in capitals
 * @param placeOf maps a UTF-16 index of the original text to the capitals
 */
public record Capitals(String text, IntUnaryOperator placeOf) {

  private static final CaseMap.Upper UPPER = CaseMap.toUpper();

  /** Puts a text into capitals. */
  public static Capitals of(String text, Language language) {
    Edits edits = new Edits();
    String upper = UPPER.apply(language.locale(), text, new StringBuilder(), edits).toString();
    if (!edits.hasChanges()) {
      return new Capitals(text, i -> i);
    }
    return new Capitals(upper, i -> edits.getFineIterator().destinationIndexFromSourceIndex(i));
  }
}
