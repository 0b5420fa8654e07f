package io.github.readfall.lettering.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.lettering.style.HouseStyle;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Effects are as loud as they are written: common practice. */
class LoudnessTest {

  private static double sizePx(String... cues) {
    return Sample.set(Sample.shelf(), "en", cues).get(0).type().fontPx();
  }

  @Test
  void smallLettersAreQuieterThanCapitalsAndLoudIsLouder() {
    double small = sizePx("SFX: krr", "ILSE: What?");
    double mixed = sizePx("SFX: Krr", "ILSE: What?");
    double capitals = sizePx("SFX: KRR", "ILSE: What?");
    double loud = sizePx("SFX (loud): KRR", "ILSE: What?");
    assertTrue(small < mixed && mixed < capitals && capitals < loud);
  }

  @Test
  void aLoudEffectAloneInItsPanelFillsUpToHalfOfIt() {
    SetBalloon alone = Sample.set(Sample.shelf(), "en", "SFX: KRRANNKK").get(0);
    HouseStyle style = HouseStyle.DEFAULT;
    double panelPx = style.strip().widthPx() - 2 * style.strip().safeMarginPx();
    assertEquals(panelPx / 2, alone.box().width(), 0.02 * panelPx);
    assertEquals(sizePx("SFX: krr", "ILSE: What?"), sizePx("SFX: krr"), 1e-9);
  }

  @Test
  void anEffectIsSetAgainWhenItsPanelGetsOtherWords() {
    Typesetter typesetter = new Typesetter(Sample.shelf(), HouseStyle.DEFAULT);
    SetEpisode before = typesetter.set(Sample.script("en", "SFX: KRRANNKK"));
    List<SetBalloon> after =
        typesetter
            .setAgain(Sample.script("en", "SFX: KRRANNKK", "ILSE: What?"), Map.of(), before)
            .balloons();
    assertEquals(sizePx("SFX: KRRANNKK", "ILSE: What?"), after.get(0).type().fontPx(), 1e-9);
  }

  @Test
  void speechIsNoLouderForBeingAlone() {
    assertEquals(sizePx("ILSE: WHAT", "ILSE: Now."), sizePx("ILSE: what"), 1e-9);
  }
}
