package io.github.readfall.languages.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.ibm.icu.text.UnicodeSet;
import com.ibm.icu.util.LocaleData;
import com.ibm.icu.util.ULocale;
import io.github.readfall.languages.translate.State;
import io.github.readfall.languages.translate.TranslatedCue;
import io.github.readfall.languages.translate.Translation;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.Sample;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetLine;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.script.Cue;
import io.github.readfall.script.CueKind;
import io.github.readfall.script.CueText;
import io.github.readfall.script.Emphasis;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.MarkupReader;
import io.github.readfall.script.Script;
import io.github.readfall.script.read.ScriptReader;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.text.Language;
import io.github.readfall.type.text.Languages;
import io.github.readfall.type.text.PlacedRun;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class StandInTest {

  private static final FontShelf SHELF = Sample.shelf();
  private static final Language ENGLISH = Languages.of("en");
  private static final int DOTTED_CIRCLE = 0x25CC;
  private static final Map<String, Translation> TRANSLATED = new ConcurrentHashMap<>();
  private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{M}]+");

  static List<Language> languages() {
    return Languages.all();
  }

  private static Script sample() throws Exception {
    Path file = Path.of("sample-scripts/overdue-tide/ep01/script.txt");
    return new ScriptReader().read(Files.readString(file), Keywords.ENGLISH).script();
  }

  /** The sample's, made once for each language. */
  private static Translation translated(Language target) throws Exception {
    Translation known = TRANSLATED.get(target.tag());
    if (known != null) {
      return known;
    }
    Translation made = translatedAfresh(target);
    TRANSLATED.put(target.tag(), made);
    return made;
  }

  private static Translation translatedAfresh(Language target) throws Exception {
    return StandIn.translation(sample(), target, ExpectedLength.measured(ENGLISH, target));
  }

  private static Cue cue(String text) {
    return Sample.script("en", "ILSE: " + text).cues().get(0);
  }

  private static String in(String tag, String text) throws Exception {
    Language target = Languages.of(tag);
    return StandIn.in(target, ExpectedLength.measured(ENGLISH, target)).of(cue(text), ENGLISH);
  }

  @ParameterizedTest
  @MethodSource("languages")
  void aStandInIsAsLongAsIsExpected(Language target) throws Exception {
    ExpectedLength lengths = ExpectedLength.measured(ENGLISH, target);
    int total = 0;
    int expectedTotal = 0;
    for (TranslatedCue cue : translated(target).cues()) {
      int expected = lengths.of(cue.cue().text().characters()).likely();
      int characters = MarkupReader.text(cue.target()).characters();
      boolean effect = cue.cue().kind() == CueKind.EFFECT; // one word: no longer than there is one
      assertTrue(
          Math.abs(characters - expected) <= 2 || (effect && characters < expected), cue::target);
      total += characters;
      expectedTotal += expected;
    }
    assertEquals(expectedTotal, total, 0.03 * expectedTotal);
  }

  /** The letters that CLDR says the language is written in, but for a few rare ideographs. */
  @ParameterizedTest
  @MethodSource("languages")
  void itsLettersAreItsLanguages(Language target) throws Exception {
    ULocale locale = ULocale.forLanguageTag(target.tag());
    UnicodeSet letters = new UnicodeSet();
    for (int kind : new int[] {LocaleData.ES_STANDARD, LocaleData.ES_AUXILIARY}) {
      letters.addAll(LocaleData.getInstance(locale).getExemplarSet(0, kind));
    }
    letters.closeOver(UnicodeSet.ADD_CASE_MAPPINGS);
    UnicodeSet single = new UnicodeSet();
    letters.forEach(single::addAll);
    int foreign = 0;
    int all = 0;
    for (TranslatedCue cue : translated(target).cues()) {
      for (int c : cue.target().codePoints().filter(Character::isLetter).toArray()) {
        foreign += single.contains(c) ? 0 : 1;
        all++;
      }
    }
    assertTrue(all > 200, "too few to say anything: " + all);
    assertTrue(foreign <= all / 50, foreign + " of " + all);
  }

  /** Unicode's property of direction, by the JDK. */
  @ParameterizedTest
  @MethodSource("languages")
  void itReadsTheWayItsLanguageDoes(Language target) throws Exception {
    for (TranslatedCue cue : translated(target).cues()) {
      int[] letters = cue.target().codePoints().filter(Character::isLetter).toArray();
      for (int letter : letters) {
        byte direction = Character.getDirectionality(letter);
        boolean rightToLeft =
            direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
        assertEquals(target.rightToLeft(), rightToLeft, cue.target());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("languages")
  void aLongScriptHasWordsAsLongAsTheLanguageHas(Language target) throws Exception {
    if (!Spaces.areWritten(target)) {
      return; // there are no words to see
    }
    StandIn standIn = StandIn.in(target, ExpectedLength.measured(ENGLISH, target));
    int longest = 0;
    for (int i = 0; i < 400; i++) {
      String text = standIn.of(cue("This is line number " + i + " of a long day at sea"), ENGLISH);
      longest = Math.max(longest, longestWord(text));
    }
    int known = Ratio.whole(ReferenceText.of(target)).longestWord();
    assertTrue(longest <= known, longest + " of " + known);
    assertTrue(longest >= 0.75 * known, longest + " of " + known);
  }

  private static int longestWord(String text) {
    return WORD.matcher(text).results().mapToInt(word -> word.group().length()).max().orElse(0);
  }

  @ParameterizedTest
  @MethodSource("languages")
  void itIsSetWithoutAMissingLetterOrAMarkThatStandsOnNothing(Language target) throws Exception {
    Script script = translated(target).of(sample());
    List<SetBalloon> balloons = new Typesetter(SHELF, HouseStyle.DEFAULT).set(script).balloons();
    assertEquals(57, balloons.size());
    for (SetBalloon balloon : balloons) {
      assertEquals(List.of(), balloon.missingLetters(), balloon.cue().text().plain());
      for (SetLine line : balloon.lines()) {
        line.line().runs().forEach(StandInTest::assertHasItsGlyphs);
      }
    }
  }

  private static void assertHasItsGlyphs(PlacedRun run) {
    int circle =
        run.type().face().covers(DOTTED_CIRCLE)
            ? run.type().face().shape(Character.toChars(DOTTED_CIRCLE), 0, 1, false).glyph(0)
            : 0;
    for (int i = 0; i < run.glyphs().size(); i++) {
      assertNotEquals(0, run.glyphs().glyph(i), run.text());
      assertNotEquals(circle, run.glyphs().glyph(i), run.text());
    }
  }

  @ParameterizedTest
  @MethodSource("languages")
  void theSameCueHasTheSameStandInAndEmphasisAndBreaksAreKept(Language target) throws Exception {
    Translation first = translated(target);
    assertEquals(first, translatedAfresh(target));
    assertEquals(target.tag(), first.language());
    for (TranslatedCue cue : first.cues()) {
      CueText source = cue.cue().text();
      CueText text = MarkupReader.text(cue.target());
      assertEquals(State.INITIAL, cue.state());
      assertTrue(cue.isTranslated());
      if (cue.cue().kind() != CueKind.EFFECT) { // one word
        assertEquals(count(source.plain(), '\n'), count(text.plain(), '\n'), cue::target);
      }
      assertEquals(source.spans().isEmpty(), text.spans().isEmpty(), cue::target);
    }
  }

  private static long count(String text, int character) {
    return text.chars().filter(c -> c == character).count();
  }

  @Test
  void wordsThatStandOutStandWhereTheyDid() throws Exception {
    CueText text = MarkupReader.text(in("de", "It is *counting* the boats that lie in the _mud_"));
    assertEquals(
        List.of(Emphasis.STRONG, Emphasis.SLANTED),
        text.spans().stream().map(span -> span.emphasis()).toList());
    assertTrue(text.spans().get(0).start() < text.plain().length() / 2, text.raw());
    assertTrue(text.spans().get(1).start() > text.plain().length() / 2, text.raw());
  }

  @Test
  void anEffectIsOneWord() throws Exception {
    for (Language target : languages()) {
      for (TranslatedCue cue : translated(target).cues()) {
        if (cue.cue().kind() == CueKind.EFFECT) {
          String plain = MarkupReader.text(cue.target()).plain();
          assertTrue(plain.chars().noneMatch(Character::isWhitespace), plain);
        }
      }
    }
  }

  /** Marks: CLDR for quotation, for the others common practice. */
  @ParameterizedTest
  @CsvSource({
    "de, Where is our water?, '', ?",
    "es, Where is our water?, ¿, ?",
    "es, Run back to the boat!, ¡, !",
    "fr, Where is our water?, '', '\u00A0?'",
    "ar, Where is our water?, '', ؟",
    "el, Where is our water?, '', ;",
    "ja, Where is our water?, '', ？",
    "zh, The mill stands in water., '', 。",
    "hi, The mill stands in water., '', ।",
    "de, “The mill stands in water.”, „, .“",
    "ja, “The mill stands in water.”, 「, 。」",
    "fr, “The mill stands in water.”, '«\u00A0', '.\u00A0»'",
    "it, The mill stands..., '', …",
    "it, The mill stands in —, '', —"
  })
  void aSentenceHasItsLanguagesMarks(String tag, String source, String opening, String ending)
      throws Exception {
    String text = MarkupReader.text(in(tag, source)).plain();
    assertTrue(text.startsWith(opening), text);
    assertTrue(text.endsWith(ending), text);
    assertTrue(Character.isLetter(text.codePointAt(opening.length())), text);
  }

  @Test
  void capitalsAreTheSources() throws Exception {
    assertTrue(Character.isUpperCase(in("fi", "The mill stands").codePointAt(0)));
    assertTrue(Character.isLowerCase(in("fi", "the mill stands").codePointAt(0)));
    String loud = in("tr", "THE MILL STANDS IN WATER");
    assertEquals(loud, loud.toUpperCase(Languages.of("tr").locale()));
  }

  @Test
  void marksAloneStay() throws Exception {
    assertEquals("…", in("de", "..."));
    assertEquals("?!", in("de", "?!"));
  }
}
