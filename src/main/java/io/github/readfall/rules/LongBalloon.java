package io.github.readfall.rules;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.plan.WordCount;
import io.github.readfall.strip.galley.Galley;
import java.util.stream.Stream;

/** More words in a balloon than a reader takes in at a glance. The limit is common practice. */
final class LongBalloon implements Rule {

  @Override
  public String id() {
    return "words/long";
  }

  @Override
  public Severity severity() {
    return Severity.WARNING;
  }

  @Override
  public Stream<Finding> check(Galley galley) {
    SetEpisode episode = galley.set();
    double limit = episode.style().limit(id());
    return episode.balloons().stream()
        .filter(balloon -> WordCount.of(balloon.cue().text()) > limit)
        .map(balloon -> finding(balloon, limit));
  }

  private Finding finding(SetBalloon balloon, double limit) {
    int words = WordCount.of(balloon.cue().text());
    String message =
        Fault.name(balloon)
            + " has "
            + words
            + " words, more than "
            + NumberWords.down(limit, 1)
            + ".";
    String advice = "Shorten it, or part it into two balloons, the second marked (joined).";
    return Fault.in(balloon, this, message, advice).measured(words, limit, "words");
  }
}
