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
 * A voice or manner lettered so small, on purpose, that it cannot be read on the narrowest phone.
 * Sources: see {@link io.github.readfall.base.viewing.LetterKind}.
 */
final class SmallVoice implements Rule {

  @Override
  public RuleSpec spec() {
    return RuleSpec.SMALL_VOICE;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    SetEpisode episode = galley.set();
    double limit = RuleSpec.SMALL_VOICE.limitIn(episode.style());
    return episode.balloons().stream()
        .filter(balloon -> balloon.look().size() < 1)
        .flatMap(
            balloon ->
                LetterSize.tooSmall(balloon, episode, limit).stream()
                    .map(size -> finding(balloon, size)));
  }

  private Finding finding(SetBalloon balloon, LetterSize size) {
    Phrase advice =
        balloon.wanted().isLettered() ? Phrase.of(size.enlarged(balloon)) : raised(balloon, size);
    return BalloonFinding.of(
            balloon, RuleSpec.SMALL_VOICE, Phrase.of(size.message(balloon)), advice)
        .measured(size.arcmin(), size.limit(), RuleSpec.SMALL_VOICE.unit());
  }

  private static Phrase raised(SetBalloon balloon, LetterSize size) {
    double factor = balloon.look().size();
    return Phrase.of("It is lettered at " + NumberText.down(factor, 2) + " of the usual size, by ")
        .either("[voices] and [manners] in ", "its voice or manner in ")
        .houseStyle()
        .then("; at " + NumberText.up(factor / size.share(), 2) + " it can be read.");
  }
}
