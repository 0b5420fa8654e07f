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
import io.github.readfall.type.text.SizeBasis;
import java.util.stream.Stream;

/**
 * Letters of a voice of full size that are too small to read on the narrowest phone. Sources: see
 * {@link LetterHeight}.
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
                    .map(size -> finding(balloon, size, advice(balloon, size, episode))));
  }

  private static Phrase advice(SetBalloon balloon, LetterSize size, SetEpisode episode) {
    return balloon.wanted().isLettered()
        ? Phrase.of(size.enlarged(balloon))
        : Phrase.of("Raise ")
            .either(
                size.height().key() + " under [lettering] in ",
                "the height at which " + size.height().letter() + " is to be seen in ")
            .houseStyle()
            .then(" to " + NumberText.up(needed(balloon, size, episode), 1))
            .either("", " minutes of arc")
            .then(" or more.");
  }

  /** The least angle to ask for that makes these letters large enough, in minutes of arc. */
  private static double needed(SetBalloon balloon, LetterSize size, SetEpisode episode) {
    if (balloon.language().sizeBasis() == SizeBasis.EM) {
      return episode.style().lettering().capArcmin() / size.share();
    }
    double stripWidthPx = episode.style().strip().widthPx();
    double seenOnNarrowest =
        episode.phone().angleOf(size.height().px(), stripWidthPx).arcmin(); // letters go by it
    return size.limit() / balloon.look().size() * seenOnNarrowest / size.arcmin();
  }

  private Finding finding(SetBalloon balloon, LetterSize size, Phrase advice) {
    return BalloonFinding.of(balloon, RuleSpec.SIZE, Phrase.of(size.message(balloon)), advice)
        .measured(size.arcmin(), size.limit(), RuleSpec.SIZE.unit());
  }
}
