package io.github.readfall.lettering.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.Endurance;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.script.CueText;
import io.github.readfall.script.Script;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.text.Language;
import io.github.readfall.type.text.Languages;
import io.github.readfall.type.text.LineBreaks;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Held to counting: every beginning, letter by letter, shaped and fitted by itself, until so many
 * in a row do not go in that no longer one does.
 */
class OutlineCapacityTest {

  private static final FontShelf SHELF = Sample.shelf();
  private static final Typesetter TYPESETTER = new Typesetter(SHELF, HouseStyle.DEFAULT);
  private static final String[] SOURCES = {
    "ILSE: We've eleven boats lying on their sides, and a pilot too.",
    "CAPTION: Nobody had turned the wheel since spring.",
    "BRAM (shout): Everybody off the bridge!",
    "RADIO (electronic): Tide Desk, this is Harbour."
  };

  /** A hair more than the type's size, by which the fitter's rounding may differ. */
  private static final double NEARLY = 1 - 1e-4;

  /** So many more letters in a row that do not go in: longer than any word that can be broken. */
  private static final int HOPELESS = 40;

  static List<Language> languages() {
    return Endurance.languages();
  }

  @ParameterizedTest
  @MethodSource("languages")
  void noMoreGoesInThanCountingFindsAndNearlyAsMuch(Language language) {
    List<SetBalloon> balloons = Sample.set(SHELF, "en", SOURCES);
    int found = 0;
    int counted = 0;
    int half = Languages.all().indexOf(language) % 2; // of the shapes, in turn: counting is slow
    for (int i = half; i < SOURCES.length; i += 2) {
      String text = String.join(" ", Declaration.texts(language.tag()).subList(2 * i, 2 * i + 2));
      SetBalloon balloon = balloons.get(i);
      ShapedCue cue = shaped(balloon, language, text);
      int goesIn = charactersInto(cue, balloon.box().width(), balloon.box().height());
      int byCounting = count(balloon, language, text);
      assertTrue(goesIn <= byCounting + 2, goesIn + " not " + byCounting + " of " + text);
      found += goesIn;
      counted += byCounting;
    }
    assertTrue(found >= 0.9 * counted, found + " of " + counted);
  }

  @Test
  void forAWholeSentenceOfSpeechItIsWhatCountingFinds() {
    SetBalloon balloon = Sample.set(SHELF, "en", SOURCES).get(0);
    Language english = Languages.of("en");
    String text = Declaration.texts("en").get(0);
    ShapedCue cue = shaped(balloon, english, text);
    assertEquals(
        count(balloon, english, text),
        charactersInto(cue, balloon.box().width(), balloon.box().height()));
  }

  @ParameterizedTest
  @MethodSource("languages")
  void inALargerOutlineNoLessGoesIn(Language language) {
    List<SetBalloon> balloons = Sample.set(SHELF, "en", SOURCES);
    String text = String.join(" ", Declaration.texts(language.tag()).subList(0, 4));
    for (SetBalloon balloon : balloons) {
      ShapedCue cue = shaped(balloon, language, text);
      int before = 0;
      for (double scale = 0.3; scale < 1.5; scale += 0.1) {
        int now = charactersInto(cue, 500 * scale, 300 * scale);
        assertTrue(now >= before, language.tag() + " " + balloon.look().shape() + " at " + scale);
        before = now;
      }
    }
  }

  private static int charactersInto(ShapedCue cue, double widthPx, double heightPx) {
    return OutlineCapacity.of(cue, new LineBreaks())
        .charactersInto(OutlineRoom.of(cue, widthPx, heightPx));
  }

  private static int count(SetBalloon balloon, Language language, String text) {
    int characters = text.codePointCount(0, text.length());
    int best = 0;
    int last = 0;
    for (int end = 1; end <= characters && (Endurance.isLong() || end - last <= HOPELESS); end++) {
      String beginning = text.substring(0, text.offsetByCodePoints(0, end));
      if (!beginning.isBlank() && goesIn(balloon, shaped(balloon, language, beginning.strip()))) {
        best = lettered(balloon, language, beginning);
        last = end;
      }
    }
    return best;
  }

  /** Code points in capitals, where the cue is in capitals. */
  private static int lettered(SetBalloon balloon, Language language, String text) {
    String whole = shaped(balloon, language, text.strip()).passage().text();
    return whole.codePointCount(0, whole.length());
  }

  private static boolean goesIn(SetBalloon balloon, ShapedCue cue) {
    Copyfit copyfit = Copyfit.into(cue, balloon.box().width(), balloon.box().height());
    return copyfit
        .largest(copyfit.linesAt(1))
        .filter(fit -> copyfit.scale(fit.enclosed()) >= NEARLY)
        .isPresent();
  }

  /** The balloon's cue with other words. */
  private static ShapedCue shaped(SetBalloon balloon, Language language, String text) {
    Script script =
        Sample.script("en", SOURCES)
            .inLanguage(
                language.tag(),
                cue ->
                    cue.id().equals(balloon.cue().id())
                        ? new CueText(text, text, List.of())
                        : new CueText("", "", List.of()));
    return TYPESETTER.shape(script, Map.of()).get(0);
  }
}
