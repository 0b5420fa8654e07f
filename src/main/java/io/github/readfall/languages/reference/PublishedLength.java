package io.github.readfall.languages.reference;

import io.github.readfall.type.text.Language;
import java.util.Optional;

/**
 * Lengths by a published table.
 *
 * @param table as published, for English text in a program's windows
 * @param source that is translated
 */
public record PublishedLength(LengthTable table, Language source) implements ExpectedLength {

  @Override
  public Expectation of(int sourceCharacters) {
    return table.of(sourceCharacters);
  }

  @Override
  public Optional<String> caution() {
    return source.locale().getLanguage().equals("en")
        ? Optional.empty()
        : Optional.of(
            "The table "
                + table.word()
                + " was made for English; for a text in \""
                + source.tag()
                + "\" it is only a guess.");
  }
}
