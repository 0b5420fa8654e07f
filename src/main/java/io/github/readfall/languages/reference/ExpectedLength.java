package io.github.readfall.languages.reference;

import io.github.readfall.type.text.Language;
import java.util.Optional;

/** A way to say how long a translation will be, from how long its source is. */
public sealed interface ExpectedLength permits MeasuredLength, PublishedLength {

  /**
   * What to expect of the translation of a text.
   *
   * @param sourceCharacters code points of the source; positive
   */
  Expectation of(int sourceCharacters);

  /** A sentence on what it cannot say; empty where it says what was asked. */
  Optional<String> caution();

  /**
   * By the reference texts.
   *
   * @throws NoReferenceText where either language has none
   */
  static ExpectedLength measured(Language source, Language target) throws NoReferenceText {
    return new MeasuredLength(Ratio.of(source, target));
  }

  /** By a published table, the same for every target language. */
  static ExpectedLength published(LengthTable table, Language source) {
    return new PublishedLength(table, source);
  }
}
