package io.github.readfall.rules.words;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.plan.WordCount;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.type.text.SentenceEnds;
import java.util.stream.Stream;

/** More words in a balloon than a reader takes in at a glance. The limit is common practice. */
final class LongBalloon implements Rule {

  @Override
  public RuleSpec spec() {
    return RuleSpec.LONG;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    SetEpisode episode = galley.set();
    double limit = RuleSpec.LONG.limitIn(episode.style());
    return episode.balloons().stream()
        .filter(balloon -> WordCount.of(balloon.cue().text()) > limit)
        .map(balloon -> finding(balloon, limit));
  }

  private Finding finding(SetBalloon balloon, double limit) {
    int words = WordCount.of(balloon.cue().text());
    String message =
        BalloonFinding.name(balloon)
            + " has "
            + words
            + " words, more than "
            + NumberText.down(limit, 1)
            + ".";
    String advice =
        SentenceEnds.nearestToTheMiddle(balloon.cue().text().plain(), balloon.language().locale())
            .map(
                end ->
                    "Shorten it, or part it after “"
                        + end
                        + "” into two balloons, the second marked (joined).")
            .orElse("Shorten it, or part it into two balloons, the second marked (joined).");
    return BalloonFinding.of(balloon, RuleSpec.LONG, message, advice)
        .measured(words, limit, RuleSpec.LONG.unit());
  }
}
