package io.github.readfall.rules;

import io.github.readfall.style.HouseStyle;
import io.github.readfall.typeset.SetBalloon;
import io.github.readfall.typeset.SetEpisode;
import io.github.readfall.typeset.Tightening;

/** How tight a balloon may be lettered before a rule about legibility minds. */
public final class Tightest {

  /**
   * Letters a fiftieth of an em nearer to each other than their face has them still stand apart.
   * House default, no source.
   */
  private static final double TRACKING_EM = -0.02;

  private Tightest() {}

  /** The tightest lettering of a balloon set as usual. */
  public static Tightening of(SetBalloon balloon, SetEpisode episode) {
    HouseStyle style = episode.style();
    String id = balloon.look().size() < 1 ? SmallVoice.ID : SmallType.ID;
    double size = 1 / LetterSize.least(balloon, episode, style.limit(id)).share();
    double space = style.limit(TightLeading.ID, TightLeading.LIMIT);
    double leading = (1 + space) * balloon.characterPx() / balloon.leadingPx();
    return new Tightening(Math.min(1, size), Math.min(1, leading), TRACKING_EM);
  }
}
