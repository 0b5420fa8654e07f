package io.github.readfall.rules;

import io.github.readfall.lettering.typeset.SetBalloon;
import java.util.List;

/**
 * Balloons of one speaker in one episode.
 *
 * @param strip the episode
 * @param balloons in script order; at least one
 */
record SpeakerBalloons(SeriesStrip strip, List<SetBalloon> balloons) {

  SpeakerBalloons {
    balloons = List.copyOf(balloons);
  }

  /** The speaker's name as this episode writes it. */
  String speaker() {
    return balloons.get(0).cue().speaker();
  }
}
