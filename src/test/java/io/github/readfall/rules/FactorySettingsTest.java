package io.github.readfall.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.viewing.LetterKind;
import io.github.readfall.languages.reference.ReferenceText;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.type.text.Language;
import io.github.readfall.type.text.Languages;
import io.github.readfall.type.text.LetterHeight;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every language of the table, lettered with the settings that Readfall comes with. */
class FactorySettingsTest {

  static List<Language> languages() {
    return Languages.all();
  }

  /** Article 1 of the Universal Declaration of Human Rights, spoken, whispered, shouted, told. */
  private static SetEpisode set(Language language, String toml) throws Exception {
    String said = ReferenceText.of(language).articles().get(0).paragraphs().get(0);
    String cues =
        String.join("\n\n", "ILSE: " + said, "ILSE (whisper): " + said, "ILSE (shout): " + said)
            + "\n\nCAPTION: "
            + said;
    return Fixture.set("Language: " + language.tag() + "\n\nPANEL\n\n" + cues + "\n", toml);
  }

  private static List<String> unread(SetEpisode set, Severity least) {
    return RuleBook.check(Galley.unplaced(set)).stream()
        .filter(finding -> finding.rule().startsWith("legible/"))
        .filter(finding -> finding.severity().isAtLeast(least))
        .map(Finding::toString)
        .toList();
  }

  @ParameterizedTest
  @MethodSource("languages")
  void noRuleAboutLegibilityFindsAnything(Language language) throws Exception {
    SetEpisode set = set(language, "");
    assertEquals(4, set.balloons().size());
    assertTrue(set.balloons().stream().allMatch(balloon -> balloon.lines().size() > 1));
    assertEquals(List.of(), unread(set, Severity.NOTE));
    SetEpisode written = set(language, "[voices.default]\ncapitals = false");
    assertEquals(List.of(), unread(written, Severity.WARNING)); // Turkish i has a form of its own
  }

  /**
   * The angle by its definition, 2 atan(h / 2d), on a phone 360 dp wide, 362 mm away, that shows a
   * strip of 1600 px: no letter is smaller than its default, and one is exactly as large.
   */
  @ParameterizedTest
  @MethodSource("languages")
  void theLetterThatDecidesIsAsHighAsItShould(Language language) throws Exception {
    for (String capitals : List.of("true", "false")) {
      SetBalloon plain =
          set(language, "[voices.default]\ncapitals = " + capitals).balloons().get(0);
      double least =
          plain.letters().stream()
              .mapToDouble(letter -> arcmin(letter.px()) / usual(letter.kind()))
              .min()
              .orElseThrow();
      assertEquals(1, least, 1e-6, plain.letters() + " of " + language.tag());
      List<LetterKind> judged = plain.letters().stream().map(LetterHeight::kind).toList();
      assertTrue(language.letters().containsAll(judged), judged + " in " + language.tag());
    }
  }

  private static double arcmin(double px) {
    double mm = px * 360 / 1600 * 25.4 / 160;
    return Math.toDegrees(2 * Math.atan(mm / (2 * 362))) * 60;
  }

  /** As published or chosen: docs/reading-size.md. */
  private static double usual(LetterKind kind) {
    return switch (kind) {
      case CAPITAL, KANA, HE, ALEF, KO_KAI, KA -> 17.2;
      case X_HEIGHT, TOOTH -> 12;
      case IDEOGRAPH, SYLLABLE -> 24.2;
    };
  }
}
