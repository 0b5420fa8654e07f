package io.github.readfall.type.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is typed otherwise than it is lettered. A low line stands for U+202F, a tilde for U+00A0.
 */
class ConventionTest {

  @ParameterizedTest
  @CsvSource({
    "fr, Quoi ? Non !, Quoi_? Non_!",
    "fr, Oui ; non : « ah ! », Oui_; non_: «_ah_!_»",
    "fr, Quoi? Non!, Quoi? Non!",
    "fr, Quoi  ?, Quoi__?",
    "fr, Quoi~?, Quoi~?",
    "fr, Vous ?! Hein ?…, Vous_?! Hein_?…",
    "fr, — Ah ? — Oui., — Ah_? — Oui.",
    "fr-CA, Quoi ?, Quoi_?",
    "en, What ? « Yes »: no, What ? « Yes »: no",
    "de, Was ? »Ja«, Was ? »Ja«",
    "ro, Aştept în cetăţi Şi Ţara, Aștept în cetăți Și Țara",
    "tr, İş aş, İş aş"
  })
  void isLetteredByTheLanguage(String tag, String typed, String lettered) {
    assertEquals(shown(lettered), Languages.of(tag).lettered(shown(typed), c -> true));
  }

  private static String shown(String text) {
    return text.replace('_', '\u202F').replace('~', '\u00A0');
  }

  @Test
  void whatTheFacesLackIsNotPutIn() {
    assertEquals("Quoi\u00A0?", Languages.of("fr").lettered("Quoi ?", c -> c != 0x202F));
    assertEquals("Aştept", Languages.of("ro").lettered("Aştept", c -> false));
  }

  @Test
  void everyPlaceStaysWhereItIs() {
    String text = "« Ş ? » ţ ; ! « « ? ? :";
    for (Language language : Languages.all()) {
      assertEquals(text.length(), language.lettered(text, c -> true).length(), language.tag());
    }
  }
}
