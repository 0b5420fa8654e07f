package io.github.readfall.type.text;

import com.ibm.icu.text.CaseMap;
import com.ibm.icu.text.Edits;
import java.util.function.IntUnaryOperator;

/**
 * Text put into capitals by its language's rules: ß becomes SS, Turkish i becomes İ, Greek accents
 * fall away. Capitals can be longer or shorter than what they stand for.
 *
 * @param text in capitals
 * @param placeOf where a UTF-16 index of the text before lies in the capitals
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
