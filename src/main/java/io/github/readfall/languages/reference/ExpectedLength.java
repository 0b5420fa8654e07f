package io.github.readfall.languages.reference;

import io.github.readfall.type.text.Language;
import java.util.Optional;

/** A way to say how long a translation will be, from how long its source is. */
public sealed interface ExpectedLength permits MeasuredLength, PublishedLength {

  /**
   * The expected length of the translation of a text.
   *
   * @param sourceCharacters code points of the source; positive
   */
  Expectation of(int sourceCharacters);

  /** A sentence on its limits for this language; empty if it has none. */
  Optional<String> caution();

  /**
   * The expected length by the reference texts.
   *
   * @throws NoReferenceText if either language has none
   */
  static ExpectedLength measured(Language source, Language target) throws NoReferenceText {
    return new MeasuredLength(Ratio.of(source, target));
  }

  /** The expected length by a published table, the same for every target language. */
  static ExpectedLength published(LengthTable table, Language source) {
    return new PublishedLength(table, source);
  }
}
