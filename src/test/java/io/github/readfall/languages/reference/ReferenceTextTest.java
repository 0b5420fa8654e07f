package io.github.readfall.languages.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.ibm.icu.text.Normalizer2;
import io.github.readfall.type.text.Language;
import io.github.readfall.type.text.Languages;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ReferenceTextTest {

  /** The declaration has thirty articles: United Nations, General Assembly, resolution 217 A. */
  private static final int ARTICLES = 30;

  static List<Language> languages() {
    return Languages.all();
  }

  @ParameterizedTest
  @MethodSource("languages")
  void everyLanguageOfTheTableHasAllArticlesInNormalForm(Language language) throws Exception {
    ReferenceText text = ReferenceText.of(language);
    assertEquals(ARTICLES, text.articles().size());
    for (String paragraph : text.paragraphs()) {
      assertTrue(Normalizer2.getNFCInstance().isNormalized(paragraph), paragraph);
      assertEquals(paragraph.strip(), paragraph);
      assertFalse(paragraph.isEmpty() || paragraph.contains("  "), paragraph);
      assertFalse(paragraph.matches(".*[<>\\[\\]&].*"), paragraph);
    }
  }

  /** Counted outside the project on the published files, see docs/languages-lengths.md. */
  @Test
  void theEnglishTextHasAsManyCharactersAsItsPublishedFile() throws Exception {
    assertEquals(8_247, Ratio.whole(ReferenceText.of(Languages.of("en"))).codePoints());
  }

  @Test
  void aRegionHasItsLanguagesText() throws Exception {
    assertEquals(
        ReferenceText.of(Languages.of("pt")).articles(),
        ReferenceText.of(Languages.of("pt-PT")).articles());
    assertEquals(
        ReferenceText.of(Languages.of("zh-Hant")).articles(),
        ReferenceText.of(Languages.of("zh-TW")).articles());
  }

  @Test
  void aLanguageWithoutATextIsRefusedInASentence() {
    NoReferenceText refused =
        assertThrows(NoReferenceText.class, () -> ReferenceText.of(Languages.of("sw")));
    assertTrue(refused.getMessage().contains("\"sw\""), refused.getMessage());
    assertTrue(refused.getMessage().endsWith("."), refused.getMessage());
  }
}
