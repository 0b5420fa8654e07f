package io.github.readfall.rules.legible;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Phrase;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.strip.galley.Galley;
import java.util.stream.Stream;

/**
 * Letters of a voice of full size that are too small to read on the narrowest phone. Sources: see
 * {@link io.github.readfall.base.viewing.LetterKind}.
 */
final class SmallType implements Rule {

  @Override
  public RuleSpec spec() {
    return RuleSpec.SIZE;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    SetEpisode episode = galley.set();
    double limit = RuleSpec.SIZE.limitIn(episode.style());
    return episode.balloons().stream()
        .filter(balloon -> balloon.look().size() >= 1)
        .flatMap(
            balloon ->
                LetterSize.tooSmall(balloon, episode, limit).stream()
                    .map(size -> finding(balloon, size, episode)));
  }

  private static Phrase advice(SetBalloon balloon, LetterSize size, SetEpisode episode) {
    return balloon.wanted().isLettered()
        ? Phrase.of(size.enlarged(balloon))
        : Phrase.of("Raise ")
            .either("reading-size under [lettering] in ", "the reading size in ")
            .houseStyle()
            .then(" to " + NumberText.up(needed(size, episode), 1))
            .either("", " minutes of arc")
            .then(" or more.");
  }

  /** The least angle to ask for that makes these letters large enough, in minutes of arc. */
  private static double needed(LetterSize size, SetEpisode episode) {
    return episode.style().lettering().readingArcmin() / size.share();
  }

  private static Finding finding(SetBalloon balloon, LetterSize size, SetEpisode episode) {
    Phrase advice = advice(balloon, size, episode);
    return BalloonFinding.of(balloon, RuleSpec.SIZE, Phrase.of(size.message(balloon)), advice)
        .measured(size.arcmin(), size.limit(), RuleSpec.SIZE.unit())
        .withSeverity(SizeTier.of(size.height().kind(), size.arcmin(), episode.style()));
  }
}
