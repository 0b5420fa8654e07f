package io.github.readfall.lettering.style;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.script.CueKind;
import io.github.readfall.script.Manner;
import io.github.readfall.type.balloon.ShapeKind;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HouseStyleTest {

  private static HouseStyle style(String toml) {
    ReadStyle read = new StyleReader().read(toml, "series.toml");
    assertEquals(List.of(), read.findings());
    return read.style();
  }

  private static Look spoken(HouseStyle style, String voice, Manner... manners) {
    return style.look(voice, CueKind.DIALOGUE, List.of(manners));
  }

  @Test
  void plainSpeechIsNearBlackOnWhiteInAnEllipse() {
    assertEquals(Look.SPEECH, spoken(HouseStyle.DEFAULT, "ILSE"));
    assertTrue(Look.SPEECH.text().contrastWith(Look.SPEECH.fill()) > 4.5, "WCAG 2.2, 1.4.3");
  }

  @ParameterizedTest
  @CsvSource({
    "thought, cloud, solid, 1, 400",
    "whisper, ellipse, dashed, 0.85, 400",
    "shout, burst, solid, 1, 700",
    "off, ellipse, solid, 1, 400",
    "voice-over, caption-box, solid, 1, 400",
    "caption, caption-box, solid, 1, 400",
    "sound effect, none, solid, 1.6, 400",
    "electronic, electronic, solid, 1, 400",
    "wavy, wavy, solid, 1, 400",
    "joined, ellipse, solid, 1, 400",
    "drawn, ellipse, solid, 1, 400",
    "continued, ellipse, solid, 1, 400",
    "grumpy, ellipse, solid, 1, 400",
  })
  void eachMannerHasItsLook(String manner, String shape, String line, double size, int weight) {
    Look look = spoken(HouseStyle.DEFAULT, "ILSE", Manner.of(manner));
    assertEquals(shape, look.shape().word());
    assertEquals(line, look.lineStyle().word());
    assertEquals(size, look.size());
    assertEquals(weight, look.weight());
  }

  @Test
  void captionsAreTintedAndEffectsHaveNoBalloon() {
    Look caption = HouseStyle.DEFAULT.look("CAPTION", CueKind.CAPTION, List.of());
    assertEquals(ShapeKind.CAPTION_BOX, caption.shape());
    assertEquals(new Colour(0xfff6d8), caption.fill());
    assertTrue(caption.text().contrastWith(caption.fill()) > 4.5, "WCAG 2.2, 1.4.3");
    Look effect = HouseStyle.DEFAULT.look("SFX", CueKind.EFFECT, List.of());
    assertEquals(ShapeKind.NONE, effect.shape());
  }

  @Test
  void aWhisperedThoughtIsStillAThoughtInWhicheverOrder() {
    Look one = spoken(HouseStyle.DEFAULT, "ILSE", Manner.THOUGHT, Manner.WHISPER, Manner.OFF);
    Look other = spoken(HouseStyle.DEFAULT, "ILSE", Manner.OFF, Manner.WHISPER, Manner.THOUGHT);
    assertEquals(one, other);
    assertEquals(ShapeKind.CLOUD, one.shape());
    assertEquals(LineStyle.DASHED, one.lineStyle());
  }

  @Test
  void voiceThenMannerAndSizesMultiply() {
    HouseStyle style =
        style("[voices.GIANT]\nsize = 1.2\nslant = 8\nfill = '#eef'\n[manners.whisper]\nslant = 2");
    Look look = spoken(style, "GIANT", Manner.WHISPER);
    assertEquals(1.2 * 0.85, look.size(), 1e-12);
    assertEquals(2, look.slantDeg());
    assertEquals(new Colour(0xeeeeff), look.fill());
    assertEquals(LineStyle.DASHED, look.lineStyle(), "what [manners.whisper] leaves out stands");
  }

  @Test
  void aMannerWrittenTwiceCountsOnce() {
    assertEquals(
        spoken(HouseStyle.DEFAULT, "ILSE", Manner.WHISPER),
        spoken(HouseStyle.DEFAULT, "ILSE", Manner.WHISPER, Manner.WHISPER));
  }

  @Test
  void theDefaultVoiceIsUnderEveryVoiceButNotUnderEffects() {
    HouseStyle style =
        style("[voices.default]\nface = 'Hand'\nsize = 0.9\n[voices.ILSE]\nslant = 5");
    Look ilse = spoken(style, "ILSE");
    assertEquals(Optional.of("Hand"), ilse.face());
    assertEquals(0.9, ilse.size());
    assertEquals(0.9, spoken(style, "Default").size(), "not twice");
    assertEquals(Optional.of("Hand"), style.look("CAPTION", CueKind.CAPTION, List.of()).face());
    assertEquals(Optional.empty(), style.look("SFX", CueKind.EFFECT, List.of()).face());
  }

  @Test
  void aVoiceNamedLikeTheCaptionKeywordChangesCaptions() {
    HouseStyle style = style("[voices.CAPTION]\nfill = '#ddeeff'");
    Look look = style.look("CAPTION", CueKind.CAPTION, List.of(Manner.CAPTION));
    assertEquals(new Colour(0xddeeff), look.fill());
    assertEquals(ShapeKind.CAPTION_BOX, look.shape());
  }

  @ParameterizedTest
  @CsvSource({"ilse, ILSE", "İlke, ilke", "OLD WOUTER, old  wouter", "ΕΛΕΝΗΣ, Ελενης", "민수, 민수"})
  void voicesAreFoundInAnyCase(String written, String asked) {
    HouseStyle style = style("[voices.\"" + written + "\"]\nslant = 5");
    assertEquals(5, spoken(style, asked).slantDeg());
  }

  @Test
  void theSameVoiceTwiceIsOneVoice() {
    HouseStyle style = style("[voices.ILSE]\nslant = 5\n[voices.Ilse]\nweight = 700");
    assertEquals(5, spoken(style, "ILSE").slantDeg());
    assertEquals(700, spoken(style, "ILSE").weight());
  }

  @Test
  void theNarrowestPhoneDecidesAndOfTwoTheFartherOne() {
    HouseStyle style =
        style(
            "[phones.wide]\nwidth-dp = 412\n[phones.near]\nwidth-dp = 350\ndistance-mm = 300\n"
                + "[phones.far]\nwidth-dp = 350\ndistance-mm = 400");
    assertEquals("far", style.narrowestPhone().name());
    assertEquals(
        List.of("wide", "near", "far"),
        style.phones().stream().map(phone -> phone.name()).toList());
  }

  @Test
  void aLimitIsTheFilesElseTheBuiltInElseABug() {
    HouseStyle style = style("[limits]\n'words/long' = 30\n'space/crowded' = 12");
    assertEquals(30, style.limit("words/long"));
    assertEquals(16, style.limit("legible/size"), "ISO 9241-3, quoted in NUREG-0700 Rev. 2");
    assertEquals(12, style.limit("space/crowded", 8));
    assertEquals(8, HouseStyle.DEFAULT.limit("space/crowded", 8));
    assertThrows(IllegalArgumentException.class, () -> style.limit("no/such-rule"));
  }

  @Test
  void aSeverityIsTheFilesElseTheRules() {
    HouseStyle style = style("[severities]\n'flow/jump' = 'note'\n'script/too-long' = 'error'");
    assertEquals(Severity.NOTE, style.severity("flow/jump", Severity.ERROR));
    assertEquals(Severity.ERROR, style.severity("script/too-long", Severity.NOTE));
    assertEquals(Severity.WARNING, style.severity("space/cut", Severity.WARNING));
  }

  @Test
  void mannersMayBeNamedInTheScriptsOwnLanguage() {
    HouseStyle style =
        style("[keywords.manners]\nsusurro = 'whisper'\n[manners.susurro]\nsize = 0.9");
    assertEquals(Manner.WHISPER, style.keywords().manner("Susurro"));
    assertEquals(0.9, style.manner(Manner.WHISPER).size().orElseThrow());
  }

  @Test
  void aWhisperIsReadableAsItComes() {
    HouseStyle style = HouseStyle.DEFAULT;
    double whisper = spoken(style, "ILSE", Manner.WHISPER).size();
    assertFalse(style.lettering().readingArcmin() * whisper < style.limit("legible/small-voice"));
  }
}
