package io.github.readfall.window.script;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextSearchTest {

  private static final String TEXT = "Tide, tides and İTIDE: tide.";

  @ParameterizedTest(name = "{0} case {1} words {2}")
  @CsvSource({
    "tide, false, false, 0 6 17 23",
    "tide, true, false, 6 23",
    "tide, false, true, 0 23",
    "Tide, true, true, 0",
    "mill, false, false, ''",
    "'', false, false, ''"
  })
  void findsEveryPlace(String wanted, boolean matchCase, boolean wholeWords, String places) {
    String found =
        new TextSearch(wanted, matchCase, wholeWords)
            .in(TEXT).stream()
                .map(range -> String.valueOf(range.start()))
                .collect(Collectors.joining(" "));
    assertEquals(places, found);
  }

  @Test
  void putsOtherWordsInEveryPlaceOnce() {
    TextSearch search = new TextSearch("aa", true, false);
    assertEquals("aab aab a", search.replacedIn("aa aa a", "aab"));
  }
}
