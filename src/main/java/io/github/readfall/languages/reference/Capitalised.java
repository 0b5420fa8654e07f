package io.github.readfall.languages.reference;

import com.ibm.icu.lang.UCharacter;
import com.ibm.icu.util.ULocale;
import io.github.readfall.type.text.Language;
import java.util.ArrayList;
import java.util.List;

/** Gives words the capitals that a sentence of another language has. */
final class Capitalised {

  private Capitalised() {}

  /** The words with the source's capitals: all, or the first. */
  static List<String> of(List<String> words, Sentence sentence, Language source, Language target) {
    if (words.isEmpty() || !target.hasCapitals()) {
      return words;
    }
    ULocale locale = ULocale.forLanguageTag(target.tag());
    String letters =
        sentence
            .words()
            .codePoints()
            .filter(Character::isLetter)
            .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
            .toString();
    boolean all = letters.length() > 1 && letters.codePoints().allMatch(Character::isUpperCase);
    if (all) {
      return words.stream().map(word -> UCharacter.toUpperCase(locale, word)).toList();
    }
    boolean first =
        !source.hasCapitals()
            || (!letters.isEmpty() && Character.isUpperCase(letters.codePointAt(0)));
    List<String> cased = new ArrayList<>(words);
    if (first) {
      cased.set(
          0, UCharacter.toTitleCase(locale, words.get(0), null, UCharacter.TITLECASE_NO_LOWERCASE));
    }
    return cased;
  }
}
