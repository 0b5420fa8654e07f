package io.github.readfall.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Spelling;
import io.github.readfall.script.read.ReadScript;
import io.github.readfall.script.read.ScriptReader;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Keywords, manners, headings, and characters that a table of text cannot show. */
class ScriptWordsTest {

  @ParameterizedTest
  @CsvSource({
    "V.O., voice-over",
    "v.o, voice-over",
    "O.S., off",
    "O.P., off",
    "off-panel, off",
    "Off Panel, off",
    "CONT'D, continued",
    "cont’d, continued",
    "CONT’D., continued",
    "sfx, sound effect",
    "radio, electronic",
    "faint, wavy",
    "thinks, thought",
    "THINKING, thought",
    "Sound Effect, sound effect",
    "voice over, voice-over",
    "hand-lettered, drawn",
    "joined, joined",
    "whispering, whisper",
    "yelling, shout",
    "WHISPER, whisper",
    "under her breath, whisper",
    "hushed, whisper",
    "small, small",
    "quietly, small",
    "Softly, small",
    "muttering, small",
    "mumbles, small",
    "murmurs, small",
    "yells, shout",
    "screams, shout",
    "loud, loud",
    "LOUDLY, loud",
    "sings, singing",
    "O.C., off",
    "off-screen, off",
    "on phone, electronic",
    "on the phone, electronic",
    "over the radio, electronic",
    "TV, electronic",
    "from a loudspeaker, electronic",
    "unboxed, unboxed",
    "bleed, bleed",
    "connected, joined"
  })
  void mannersHaveOtherSpellings(String written, String word) {
    assertEquals(new Manner(word), Manner.of(written));
    assertTrue(Manner.of(written).isKnown());
  }

  @ParameterizedTest
  @CsvSource({
    "quitely, quietly",
    "whsiper, whisper",
    "of-panel, offpanel",
    "grumbling, mumbling",
    "half-asleep, ''"
  })
  void anUnknownMannerIsComparedWithTheKnownOnes(String written, String near) {
    assertFalse(Manner.of(written).isKnown());
    assertEquals(near, Manner.near(written).orElse(""));
  }

  @Test
  void aDeviceIsNoMannerOfAnotherKind() {
    assertFalse(Manner.of("on the roof").isKnown());
    assertFalse(Manner.of("from whisper").isKnown());
  }

  @Test
  void anUnknownMannerIsKeptInSmallLetters() {
    assertEquals(new Manner("half-asleep"), Manner.of("  Half-Asleep "));
    assertFalse(Manner.of("half-asleep").isKnown());
  }

  @Test
  void spanishKeywordsStandInTheirPlace() {
    Keywords spanish =
        new Keywords("Viñeta", "Escena", "Cartela", "Efecto", Map.of("susurro", Manner.WHISPER));
    Script script =
        new ScriptReader()
            .read(
                """
                ESCENA Molino
                VIÑETA 1
                CARTELA: Nadie.
                EFECTO: CRAC
                ILSE (Susurro): Sí.
                Viñeta 2
                PANEL 3
                """,
                spanish)
            .script();
    assertEquals(2, script.panels().size());
    assertEquals(List.of("PANEL 3"), script.panels().get(1).description());
    assertEquals(
        List.of(CueKind.CAPTION, CueKind.EFFECT, CueKind.DIALOGUE),
        script.cues().stream().map(Cue::kind).toList());
    assertTrue(script.cues().get(2).has(Manner.WHISPER));
    assertEquals("CARTELA", script.cues().get(0).speaker());
  }

  @Test
  void koreanKeywordsStandInTheirPlace() {
    Keywords korean = new Keywords("컷", "장면", "해설", "효과음", Map.of("생각", Manner.THOUGHT));
    Script script =
        new ScriptReader()
            .read("장면 방앗간\n컷1\n컷이 넓다.\n컷 2\n해설: 봄.\n효과음: 쾅\n철수 (생각): 또.\n", korean)
            .script();
    assertEquals(2, script.panels().size());
    assertEquals(Optional.of(1), script.panels().get(0).scene());
    assertEquals(List.of("컷이 넓다."), script.panels().get(0).description());
    assertEquals(CueKind.CAPTION, script.cues().get(0).kind());
    assertEquals(CueKind.EFFECT, script.cues().get(1).kind());
    assertTrue(script.cues().get(2).has(Manner.THOUGHT));
  }

  @Test
  void aHeadingGivesShotAndHints() {
    assertEquals(
        new ShotHints(
            Optional.of(Shot.EXTREME_CLOSE_UP),
            true,
            true,
            true,
            true,
            OptionalInt.of(1200),
            "of a hand, rain"),
        ShotHints.of(
            "Extreme Close-Up of a hand, tall, WIDE, inset, beside previous, height 1200, rain"));
    assertEquals(Optional.of(Shot.LONG), ShotHints.of("wide shot").shot());
    assertFalse(ShotHints.of("wide shot").wide());
    assertEquals(Optional.of(Shot.MEDIUM), ShotHints.of("tall medium shot").shot());
    assertTrue(ShotHints.of("tall medium shot").tall());
    assertEquals("full moon", ShotHints.of("full moon").description());
    assertEquals(OptionalInt.empty(), ShotHints.of("height 0").heightPx());
    assertEquals("height 99999999999", ShotHints.of("height 99999999999").description());
  }

  @Test
  void noBreakSpacesAreKept() {
    assertEquals(
        "a !\u202Fb c", MarkupReader.text("a\u00A0!\u202Fb \t c").plain().replace('\u00A0', ' '));
    assertEquals("a\u00A0!", MarkupReader.text("a\u00A0!").plain());
  }

  @Test
  void theLimitsOfACueAreMetAndNotPassed() {
    assertFalse(MarkupReader.text("a ".repeat(CueText.MAX_WORDS)).isTooLong());
    assertTrue(MarkupReader.text("a ".repeat(CueText.MAX_WORDS + 1)).isTooLong());
    assertFalse(MarkupReader.text("😀".repeat(CueText.MAX_CHARACTERS)).isTooLong());
    assertTrue(MarkupReader.text("😀".repeat(CueText.MAX_CHARACTERS + 1)).isTooLong());
  }

  @Test
  void aLongCueIsKeptAndToldAsAnError() {
    ReadScript read = read("PANEL\nILSE: " + "x".repeat(CueText.MAX_CHARACTERS + 1));
    assertEquals(1, read.script().cues().size());
    assertEquals(Severity.ERROR, only(read).severity());
    assertEquals("characters", only(read).measurement().orElseThrow().unit());
  }

  @Test
  void directionCharactersAreNamed() {
    assertFinding(
        "PANEL\nILSE: a\u202Eb", "script/bidi-control", 8, "U+202E RIGHT-TO-LEFT OVERRIDE");
    assertFinding("PANEL\nILSE: 😀\u200Eb", "script/bidi-control", 8, "U+200E LEFT-TO-RIGHT MARK");
    assertTrue(read("PANEL\nليلى: \u200Fإنها").findings().isEmpty());
  }

  @Test
  void whatCannotBeLetteredIsNamedAndLeftOut() {
    assertFinding("PANEL\nILSE: a\u0007b", "script/control-character", 8, "U+0007");
    assertFinding("PANEL\nILSE: a\uD800b", "script/control-character", 8, "U+D800");
    assertFinding("PANEL\nILSE: caf\uFFFD", "script/damaged-character", 10, "U+FFFD");
    assertEquals("ab", read("PANEL\nILSE: a\u0007b").script().cues().get(0).text().plain());
  }

  @Test
  void moreThanThirtyMarksOnALetterAreToldThirtyAreNot() {
    assertTrue(read("PANEL\nILSE: a" + "\u0301".repeat(30)).findings().isEmpty());
    assertFinding("PANEL\nILSE: a" + "\u0301".repeat(31), "script/many-marks", 38, "30 marks");
  }

  @Test
  void slipsBetweenNamesAreCounted() {
    assertEquals(1, Spelling.typos("ilse", "isle"));
    assertEquals(1, Spelling.typos("ilse", "ils"));
    assertEquals(2, Spelling.typos("ilse", "else "));
    assertEquals(
        Optional.empty(), Spelling.nearestName("Otto", List.of("Ilse", "Wouter"), Letters::fold));
    assertEquals(
        Optional.of("Wouter"),
        Spelling.nearestName("WUOTER", List.of("Ilse", "Wouter"), Letters::fold));
  }

  private static void assertFinding(String script, String rule, int column, String words) {
    Finding finding = only(read(script));
    assertEquals(rule, finding.rule());
    assertEquals(2, finding.where().line().orElseThrow());
    assertEquals(column, finding.where().column().orElseThrow());
    assertTrue(finding.message().contains(words), finding.message());
  }

  private static Finding only(ReadScript read) {
    assertEquals(1, read.findings().size(), read.findings().toString());
    return read.findings().get(0);
  }

  private static ReadScript read(String script) {
    return new ScriptReader().read(script, Keywords.ENGLISH);
  }
}
