package io.github.readfall.rules.legible;

import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.lettering.typeset.Tightening;
import io.github.readfall.rules.model.RuleSpec;

/** The tightest lettering of a balloon that no rule about legibility objects to. */
public final class TightestReadable {

  /**
   * Letters a fiftieth of an em nearer to each other than in their face are still apart. House
   * default, no source.
   */
  private static final double TRACKING_EM = -0.02;

  /** Lines are never closer than this share of their usual leading. House default, no source. */
  private static final double LEADING = 0.88;

  /** Keeps values just within a limit from being beyond it once they are rounded. */
  private static final double HAIR = 1.0005;

  private TightestReadable() {}

  /** The tightest lettering of a balloon set as usual. */
  public static Tightening of(SetBalloon balloon, SetEpisode episode) {
    HouseStyle style = episode.style();
    RuleSpec rule = balloon.look().size() < 1 ? RuleSpec.SMALL_VOICE : RuleSpec.SIZE;
    double size = 1 / LetterSize.least(balloon, episode, rule.limitIn(style)).share();
    return new Tightening(
        Math.min(1, size * HAIR),
        leading(balloon, style),
        balloon.language().habits().canBeSpaced() ? TRACKING_EM : 0);
  }

  /**
   * The least leading. If marks stack, or letters fill their squares, lines are already as close as
   * they may be.
   */
  private static double leading(SetBalloon balloon, HouseStyle style) {
    if (balloon.language().leadingFactor() > 1) {
      return 1;
    }
    double space = RuleSpec.LEADING.limitIn(style);
    double byRule = (1 + space) * balloon.characterPx() / balloon.leadingPx() * HAIR;
    return Math.min(1, Math.max(LEADING, byRule));
  }
}
