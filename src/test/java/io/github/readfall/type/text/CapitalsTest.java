package io.github.readfall.type.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.ibm.icu.util.LocaleData;
import com.ibm.icu.util.ULocale;
import io.github.readfall.type.font.Corpus;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Capitals by each language's rules: Unicode's SpecialCasing.txt, and for Greek the rules of CLDR's
 * el-Upper, which drop accents but keep that of the disjunctive ή.
 */
class CapitalsTest {

  @ParameterizedTest
  @CsvSource({
    "de, straße, STRASSE",
    "de, Grüße an Frau Weiß, GRÜSSE AN FRAU WEISS",
    "tr, istanbul ışık, İSTANBUL IŞIK",
    "az, istanbul ışık, İSTANBUL IŞIK",
    "en, istanbul ışık, ISTANBUL IŞIK",
    "el, Μαΐου, ΜΑΪΟΥ",
    "el, ή όχι, Ή ΟΧΙ",
    "el, σοφός, ΣΟΦΟΣ",
    "lt, 'i\u0307\u0300 \u012F\u0307\u0301 j\u0307\u0303', 'I\u0300 \u012E\u0301 J\u0303'",
    "en, i\u0307\u0300, I\u0307\u0300",
    "nl, ijs \u0133s, IJS \u0132S",
    "en, \uFB01sh o\uFB04ine, FISH OFFLINE",
    "af, \u0149, \u02BCN",
    "fr, cœur à l’île, CŒUR À L’ÎLE",
    "ru, подожди, ПОДОЖДИ",
    "ja, ゲーム ok, ゲーム OK"
  })
  void capitalsFollowTheLanguage(String tag, String text, String capitals) {
    assertEquals(capitals, Capitals.of(text, Languages.of(tag)).text());
  }

  @ParameterizedTest
  @CsvSource({
    "de, So [groß] ist das Maß, GROSS",
    "de, [Weiß] ich, WEISS",
    "de, Maß und [Fuß], FUSS",
    "de, ßß[ß]ß, SS",
    "tr, bir [ışık] için, IŞIK",
    "el, τον [Μαΐου] εκεί, ΜΑΪΟΥ",
    "en, o\uFB04ine \uFB01sh [\uFB01n] gone, FIN",
    "af, '\u0149 [man]', MAN",
    "lt, 'i\u0307\u0300 [labas]', LABAS",
    "en, plain [words] here, WORDS",
    "en, ALREADY [HIGH], HIGH"
  })
  void aSpanIsFoundAgainWhereCapitalsAreLongerOrShorter(String tag, String marked, String span) {
    String text = marked.replace("[", "").replace("]", "");
    Capitals capitals = Capitals.of(text, Languages.of(tag));
    int start = capitals.placeOf().applyAsInt(marked.indexOf('['));
    int end = capitals.placeOf().applyAsInt(marked.indexOf(']') - 1);
    assertEquals(span, capitals.text().substring(start, end));
    assertEquals(capitals.text().length(), capitals.placeOf().applyAsInt(text.length()));
  }

  @Test
  void everyWordOfTheCorpusIsFoundAgain() throws IOException {
    for (Corpus.Line line : Corpus.asWritten()) {
      Language language = Languages.of(line.language());
      Capitals capitals = Capitals.of(line.text(), language);
      int start = 0;
      for (String word : line.words()) {
        int from = capitals.placeOf().applyAsInt(start);
        int to = capitals.placeOf().applyAsInt(start + word.length());
        assertEquals(Capitals.of(word, language).text(), capitals.text().substring(from, to));
        start += word.length() + 1;
      }
    }
  }

  @Test
  void capitalsOfCapitalsAreThemselves() throws IOException {
    for (Corpus.Line line : Corpus.asWritten()) {
      Language language = Languages.of(line.language());
      String once = Capitals.of(line.text(), language).text();
      assertEquals(once, Capitals.of(once, language).text());
    }
  }

  /** How many letters CLDR 48's main exemplars have, and their capitals; German ß is S twice. */
  @ParameterizedTest
  @CsvSource({"de, 30, 29", "tr, 30, 29", "vi, 89, 89", "el, 36, 27", "en, 26, 26", "ru, 33, 33"})
  void aLanguageHasAsManyCapitalsAsCldrSays(String tag, int small, int capitals) {
    Language language = Languages.of(tag);
    List<String> exemplars =
        LocaleData.getInstance(ULocale.forLanguageTag(tag))
            .getExemplarSet(0, LocaleData.ES_STANDARD)
            .stream()
            .toList();
    assertEquals(small, exemplars.size());
    Set<Integer> raised = new HashSet<>();
    exemplars.forEach(
        letter -> Capitals.of(letter, language).text().codePoints().forEach(raised::add));
    assertEquals(capitals, raised.size());
    long listed =
        Coverage.letters(language, true).stream()
            .filter(letter -> Character.isLetter(letter.codePointAt(0)))
            .count();
    assertEquals(capitals, listed);
  }
}
