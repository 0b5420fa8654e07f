package io.github.readfall.type.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The barred I: E. J. Waterman, "General Tips", on lettering. The sentences are our own. */
class PronounITest {

  private static List<Integer> in(String tag, String text) {
    return PronounI.in(text, Languages.of(tag));
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      value = {
        "`Who am I?`, 7",
        "`I'm in`, 0",
        "`So I’ll go`, 3",
        "`and I've`, 4",
        "`If i'd known`, 3",
        "`No--I!`, 4",
        "`Ask Mara I said`, 9",
        "`Mara, if Otis I know`, 14",
        "`\nI do`, 1"
      })
  void thePronounIsFound(String text, int place) {
    assertEquals(List.of(place), in("en", text.replace("\\n", "\n")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "India",
        "Part I.",
        "King Charles I fell.",
        "I. M. Grey",
        "A.I.",
        "I-it's",
        "II",
        "I/O"
      })
  void otherCapitalsArePlain(String text) {
    assertEquals(List.of(), in("en", text));
  }

  @ParameterizedTest
  @CsvSource({"it, Sono i cani", "pl, On i ja"})
  void otherLanguagesHaveNoPronounI(String tag, String text) {
    assertEquals(List.of(), in(tag, text));
  }
}
