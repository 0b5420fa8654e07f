package io.github.readfall.text;

import java.util.Locale;
import java.util.Set;

/**
 * What lettering has to know of a language. {@link Languages} has the table.
 *
 * @param tag BCP 47
 * @param script ISO 15924 code of the script it is lettered in; names a chain of faces
 * @param breakTag BCP 47 tag that asks ICU for this language's line breaks
 * @param looseBreakTag the tag to fall back on where one phrase is wider than its balloon
 * @param sizeBasis which height decides its size
 * @param emFactor for {@link SizeBasis#EM}: its em over the Latin em
 * @param leadingFactor its leading over the series' leading; more than 1 where marks stack
 * @param hasCapitals whether it can be lettered in capitals
 * @param rightToLeft its direction
 * @param articles small words that belong to the word after them, in lower case
 * @param particles small words that belong to the word before them, in lower case
 */
public record Language(
    String tag,
    String script,
    String breakTag,
    String looseBreakTag,
    SizeBasis sizeBasis,
    double emFactor,
    double leadingFactor,
    boolean hasCapitals,
    boolean rightToLeft,
    Set<String> articles,
    Set<String> particles) {

  public Language {
    articles = Set.copyOf(articles);
    particles = Set.copyOf(particles);
  }

  public Locale locale() {
    return Locale.forLanguageTag(tag);
  }

  /** {@code ltr} or {@code rtl}, as reports write it. */
  public String direction() {
    return rightToLeft ? "rtl" : "ltr";
  }

  Language withTag(String other) {
    return new Language(
        other,
        script,
        breakTag,
        looseBreakTag,
        sizeBasis,
        emFactor,
        leadingFactor,
        hasCapitals,
        rightToLeft,
        articles,
        particles);
  }
}
