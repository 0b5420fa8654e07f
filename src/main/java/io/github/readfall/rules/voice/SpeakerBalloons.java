package io.github.readfall.rules.voice;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Where;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.script.Cue;
import java.util.List;
import java.util.OptionalInt;

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

  /** A finding about these balloons, at the first of them. */
  Finding finding(RuleSpec rule, String message, String advice) {
    Cue first = balloons.get(0).cue();
    Where where =
        new Where(
            strip.path(),
            OptionalInt.of(first.line()),
            OptionalInt.empty(),
            OptionalInt.of(first.panel()),
            balloons.stream().map(balloon -> balloon.cue().id()).toList());
    return Finding.of(rule.id(), rule.severity(), where, message, advice);
  }
}
