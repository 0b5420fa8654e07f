package io.github.readfall.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.strip.galley.Galley;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rules against what others have published, from series.toml to finding. */
class PublishedLimitsTest {

  private static final String SPOKEN = "PANEL\n\nILSE: It is counting again.\n";
  private static final String SHOUTED = "PANEL\n\nILSE (shout): It is counting again.\n";

  private static final String OWN_LIMIT = "\n[limits]\n'legible/size-error' = 7\n";

  private static boolean flags(Rule rule, SetEpisode episode) {
    List<String> found =
        RuleBook.check(Galley.unplaced(episode)).stream()
            .map(Finding::rule)
            .filter(rule.spec().id()::equals)
            .toList();
    assertEquals(found.stream().distinct().toList(), found, "one balloon, one finding");
    return !found.isEmpty();
  }

  /**
   * Examples of ACT rule afw4f7 (W3C, "Text has minimum contrast") and of Understanding 1.4.3 and
   * 1.4.11 of WCAG 2.2, whether they pass as text and as large text. Bold of 20 CSS pixels is large
   * (WCAG 2.2, "large scale": 14 point).
   */
  @ParameterizedTest
  @CsvSource({
    "#000000, #ffffff, true, true",
    "#333333, #ffffff, true, true",
    "#0000EE, #ffffff, true, true",
    "#000000, #666666, false, true",
    "#777777, #EEEEEE, false, true",
    "#AAAAAA, #ffffff, false, false",
    "#949494, #ffffff, false, true",
    "#959595, #ffffff, false, false",
    "#767676, #ffffff, true, true",
    "#777777, #ffffff, false, true",
    "#ffffff, #ffffff, false, false",
  })
  void contrast(String text, String fill, boolean passes, boolean passesLarge) throws Exception {
    String toml = "[voices.ILSE]\ntext = '" + text + "'\nfill = '" + fill + "'";
    assertEquals(!passes, flags(Fixture.rule("legible/contrast"), Fixture.set(SPOKEN, toml)));
    String large = toml + "\n[lettering]\nreading-size = 'comfortable'";
    assertEquals(
        !passesLarge, flags(Fixture.rule("legible/contrast"), Fixture.set(SHOUTED, large)));
  }

  /**
   * Capitals: 16 or more, 20 to 22 preferred (ISO 9241-3 as quoted in U.S. NRC NUREG-0700 Rev. 2,
   * 1.3.1-4), whatever the phone and the strip: 292, 362 and 400 mm are distances measured by Long
   * et al. 2017, Bababekova et al. 2011 and usual in vision science. A fiftieth less is not seen.
   */
  @ParameterizedTest
  @CsvSource({"15.6, true", "15.7, false", "16, false", "20, false", "22, false"})
  void capitals(double arcmin, boolean flagged) throws Exception {
    for (int distanceMm : new int[] {292, 362, 400}) {
      for (int widthPx : new int[] {800, 1080, 1600}) {
        String toml =
            ("[strip]\nwidth = " + widthPx)
                + ("\n[phones.own]\nwidth-dp = 390\ndistance-mm = " + distanceMm)
                + ("\n[lettering]\nreading-size = " + arcmin);
        assertEquals(flagged, flags(Fixture.rule("legible/size"), Fixture.set(SPOKEN, toml)), toml);
      }
    }
  }

  /** Below 16 it is a warning; below 12, three quarters of that, an error; a house limit. */
  @ParameterizedTest
  @CsvSource({"15, WARNING", "12, WARNING", "11.8, WARNING", "11.7, ERROR", "8, ERROR"})
  void farBelowTheLimitIsAnError(double arcmin, Severity severity) throws Exception {
    for (String script :
        List.of(SPOKEN, "Language: he\n\nPANEL\n\nאילזה: הטחנה.\n", "Language: th\n\n" + SPOKEN)) {
      SetEpisode set = Fixture.set(script, "[lettering]\nreading-size = " + arcmin);
      assertEquals(List.of(severity), severities(set), script);
    }
    SetEpisode set = Fixture.set(SPOKEN, "[lettering]\nreading-size = " + arcmin + OWN_LIMIT);
    assertEquals(List.of(Severity.WARNING), severities(set));
  }

  private static List<Severity> severities(SetEpisode set) {
    return RuleBook.check(Galley.unplaced(set)).stream()
        .filter(finding -> finding.rule().equals("legible/size"))
        .map(Finding::severity)
        .toList();
  }

  /**
   * An x of 0.2 degrees is read at full speed (Legge and Bigelow 2011, J. Vision 11(5):8). Kalam's
   * is 0.511 em high, and its capital 0.72 em: an x of 11.6 under a capital of 16.4, or of 12.1.
   */
  @ParameterizedTest
  @CsvSource({"16.4, true", "17, false"})
  void smallLetters(double readingArcmin, boolean flagged) throws Exception {
    String toml =
        "[voices.ILSE]\nface = 'Kalam'\ncapitals = false\n"
            + "[lettering]\nreading-size = "
            + readingArcmin;
    assertEquals(flagged, flags(Fixture.rule("legible/size"), Fixture.set(SPOKEN, toml)));
  }

  /** Ideographs need 1.54 times the small letter (Zhang et al. 2020, Optom. Vis. Sci. 97(10)). */
  @ParameterizedTest
  @CsvSource({"18.1, true", "18.5, false", "24.2, false"})
  void ideographs(double arcmin, boolean flagged) throws Exception {
    String toml = "[lettering]\nreading-size = " + arcmin * 17.2 / 24.2;
    for (String script :
        List.of(
            "Language: ja\n\nPANEL\n\nイルゼ: 水車小屋。\n",
            "Language: zh\n\nPANEL\n\n伊尔莎: 磨坊立在水中。\n",
            "Language: ko\n\nPANEL\n\n일제: 방앗간이 물속에 서 있다.\n")) {
      assertEquals(flagged, flags(Fixture.rule("legible/size"), Fixture.set(script, toml)), script);
    }
  }

  /**
   * Half a character between lines (U.S. NRC NUREG-0700 Rev. 3, 11.4.1.5-7): Kalam's capital is
   * 0.72 em as drawn, so 1.5 capitals are 1.08 em.
   */
  @ParameterizedTest
  @CsvSource({"1.07, true", "1.08, false"})
  void spaceBetweenLines(double leadingEm, boolean flagged) throws Exception {
    String toml = "[voices.ILSE]\nface = 'Kalam'\n[lettering]\nleading = " + leadingEm;
    String script = "PANEL\n\nILSE: It is / counting / again.\n";
    assertEquals(flagged, flags(Fixture.rule("legible/leading"), Fixture.set(script, toml)));
  }
}
