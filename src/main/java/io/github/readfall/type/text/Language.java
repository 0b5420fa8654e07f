package io.github.readfall.type.text;

import io.github.readfall.base.viewing.LetterKind;
import java.util.List;
import java.util.Locale;
import java.util.function.IntPredicate;

/**
 * The lettering of a language. {@link Languages} has the table.
 *
 * @param tag BCP 47
 * @param script ISO 15924 code of the script it is lettered in; names a chain of faces
 * @param rightToLeft its direction
 * @param breaking rules of its line ends
 * @param sizing of its letters
 * @param habits traits of its letters
 */
public record Language(
    String tag,
    String script,
    boolean rightToLeft,
    Breaking breaking,
    Sizing sizing,
    ScriptTraits habits) {

  public Locale locale() {
    return Locale.forLanguageTag(tag);
  }

  /** {@code ltr} or {@code rtl}, as reports write it. */
  public String direction() {
    return rightToLeft ? "rtl" : "ltr";
  }

  /** The letters that decide its size, the most telling first. */
  public List<LetterKind> letters() {
    return sizing.letters();
  }

  /** Its leading over the series' leading. */
  public double leadingFactor() {
    return sizing.leadingFactor();
  }

  /** Returns true if it can be lettered in capitals. */
  public boolean hasCapitals() {
    return habits.capitals();
  }

  /** Returns true if an emphasised word is slanted; otherwise weight alone shows it. */
  public boolean canSlant() {
    return habits.stress() == Stress.LEAN;
  }

  /**
   * A text as it is to be lettered, whatever the way it was typed; as long as before, and not yet
   * in capitals.
   *
   * @param has whether the faces have a character
   */
  public String lettered(String text, IntPredicate has) {
    String lettered = text;
    for (Convention convention : habits.conventions()) {
      lettered = convention.lettered(lettered, has);
    }
    return lettered;
  }

  Language withTag(String other) {
    return new Language(other, script, rightToLeft, breaking, sizing, habits);
  }

  Language fromTheRight() {
    return new Language(tag, script, true, breaking, sizing, habits);
  }

  Language byPhrase() {
    return broken(Breaking.byPhrase(tag));
  }

  Language byWord() {
    return broken(Breaking.byWord(tag));
  }

  private Language broken(Breaking other) {
    return new Language(tag, script, rightToLeft, other, sizing, habits);
  }

  Language leading(double factor) {
    Sizing other = new Sizing(sizing.letters(), factor);
    return new Language(tag, script, rightToLeft, breaking, other, habits);
  }

  Language compressing(Compression marks) {
    return with(habits.compression(marks));
  }

  Language stressed(Stress own) {
    return with(habits.stressed(own));
  }

  Language typed(Convention... own) {
    return with(habits.typed(own));
  }

  private Language with(ScriptTraits other) {
    return new Language(tag, script, rightToLeft, breaking, sizing, other);
  }
}
