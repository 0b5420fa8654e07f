package io.github.readfall.lettering.typeset;

import io.github.readfall.script.Cue;
import io.github.readfall.script.CueKind;
import io.github.readfall.script.Manner;

/**
 * How loud a sound effect is, by how it is written: small letters are quiet, capitals loud, the
 * manner {@code loud} louder, and a loud one alone in its panel may fill half of it. That is common
 * practice; the figures are house defaults, no source.
 */
final class Loudness {

  private static final double SMALL_LETTERS = 0.65;
  private static final double MIXED = 0.8;
  private static final double LOUD = 1.5;
  private static final double MOST_ALONE = 2;
  private static final double SHARE_OF_PANEL = 0.5;

  private Loudness() {}

  /** The size of an effect over that of one in capitals; 1 for anything else that is lettered. */
  static double of(Cue cue) {
    if (cue.kind() != CueKind.EFFECT) {
      return 1;
    }
    String text = cue.text().plain();
    boolean small = text.codePoints().anyMatch(Character::isLowerCase);
    boolean capitals = text.codePoints().anyMatch(Character::isUpperCase);
    double written = !small ? 1 : capitals ? MIXED : SMALL_LETTERS;
    return cue.has(Manner.LOUD) ? written * LOUD : written;
  }

  /**
   * How much larger an effect is if it is alone in its panel.
   *
   * @param widthPx of the effect as it would be among others; positive
   * @param panelPx width of a panel
   */
  static double alone(Cue cue, double widthPx, double panelPx) {
    boolean quiet = of(cue) < 1 || cue.has(Manner.SMALL) || cue.has(Manner.WHISPER);
    double room = SHARE_OF_PANEL * panelPx / widthPx;
    return quiet ? 1 : Math.max(1, Math.min(MOST_ALONE, room));
  }
}
