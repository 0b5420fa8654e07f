package io.github.readfall.type.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.type.font.Face;
import io.github.readfall.type.font.OpenFaces;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Which letters a face has, by the exemplar sets of CLDR 48 (Unicode LDML part 2, "Character
 * Elements").
 */
class CoverageTest {

  private static final int SYLLABLES = 11_172; // of modern Korean: the Unicode Standard, 3.12

  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "fr", "es", "pt", "it", "pl", "tr", "ro", "vi", "cs", "hu"})
  void theDialogueFaceHasEveryLetterOfALatinLanguage(String tag) throws Exception {
    Face face = OpenFaces.regular("Grandstander");
    for (boolean capitals : List.of(true, false)) {
      List<String> missing =
          Coverage.missing(face, Languages.of(tag), capitals).stream()
              .filter(letter -> Character.isLetterOrDigit(letter.codePointAt(0)))
              .toList();
      assertEquals(List.of(), missing);
    }
    assertTrue(Coverage.suits(face, Languages.of(tag)));
  }

  @ParameterizedTest
  @CsvSource({"el, Ω, ΐ", "ru, Ж, ё", "uk, Ї, ґ"})
  void theDialogueFaceLacksOtherAlphabets(String tag, String capital, String small)
      throws Exception {
    Face face = OpenFaces.regular("Grandstander");
    Language language = Languages.of(tag);
    assertTrue(Coverage.missing(face, language, true).contains(capital));
    assertFalse(Coverage.missing(face, language, true).contains(small), "only capitals are set");
    assertTrue(Coverage.missing(face, language, false).containsAll(List.of(capital, small)));
    assertFalse(Coverage.suits(face, language));
  }

  @Test
  void aFaceWithoutVietnameseSaysWhichStackedLettersItLacks() throws Exception {
    List<String> missing = Coverage.missing(OpenFaces.regular("Gaegu"), Languages.of("vi"), false);
    assertTrue(missing.containsAll(List.of("ế", "Ế", "ộ", "ữ")), missing::toString);
    assertFalse(missing.contains("a"));
  }

  @Test
  void oneKoreanFaceHasEverySyllableAndOneDoesNot() throws Exception {
    Language korean = Languages.of("ko");
    assertEquals(SYLLABLES, syllables(Coverage.letters(korean, false)));
    assertEquals(0, syllables(Coverage.missing(OpenFaces.regular("Dongle"), korean, false)));
    long lacking = syllables(Coverage.missing(OpenFaces.regular("Gaegu"), korean, false));
    assertTrue(lacking > 5000, "Gaegu lacks " + lacking);
  }

  private static long syllables(List<String> letters) {
    return letters.stream().filter(s -> s.matches("[\uAC00-\uD7A3]")).count();
  }

  @Test
  void whatPaintsNothingNeedsNoLetter() throws Exception {
    Face face = OpenFaces.regular("Grandstander");
    assertTrue(Coverage.covers(face, "a\u200Bb\u00ADc\u2060d\u200De\ufe0f\n\u00A0\u202F f"));
    assertFalse(Coverage.covers(face, "a\u6C38"));
    assertTrue("~!a".codePoints().noneMatch(Coverage::isInvisible));
  }

  @Test
  void lettersAreSingleCodePointsInOrder() {
    for (Language language : Languages.all()) {
      for (boolean capitals : List.of(true, false)) {
        List<Integer> letters =
            Coverage.letters(language, capitals).stream().map(s -> s.codePointAt(0)).toList();
        assertEquals(letters.stream().sorted().distinct().toList(), letters, language.tag());
      }
    }
  }

  @Test
  void noCapitalIsAskedForAsASmallLetter() {
    for (Language language : Languages.all()) {
      if (language.hasCapitals()) {
        assertEquals(
            List.of(),
            Coverage.letters(language, true).stream()
                .filter(letter -> Character.isLowerCase(letter.codePointAt(0)))
                .toList(),
            language.tag());
      }
    }
  }
}
