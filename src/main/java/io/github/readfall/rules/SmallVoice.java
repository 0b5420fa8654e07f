package io.github.readfall.rules;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.strip.galley.Galley;
import java.util.stream.Stream;

/**
 * A voice or manner lettered so small, on purpose, that it cannot be read on the narrowest phone.
 * Sources: see {@link LetterHeight}.
 */
final class SmallVoice implements Rule {

  static final String ID = "legible/small-voice";

  @Override
  public String id() {
    return ID;
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
        .filter(balloon -> balloon.look().size() < 1)
        .flatMap(
            balloon ->
                LetterSize.tooSmall(balloon, episode, limit).stream()
                    .map(size -> finding(balloon, size)));
  }

  private Finding finding(SetBalloon balloon, LetterSize size) {
    String advice = balloon.wanted().isLettered() ? size.enlarged(balloon) : raised(balloon, size);
    return Fault.in(balloon, this, size.message(balloon), advice)
        .measured(size.arcmin(), size.limit(), LetterSize.UNIT);
  }

  private static String raised(SetBalloon balloon, LetterSize size) {
    double factor = balloon.look().size();
    return "It is lettered at "
        + NumberWords.down(factor, 2)
        + " of the usual size, by [voices] and [manners] in series.toml; at "
        + NumberWords.up(factor / size.share(), 2)
        + " it can be read.";
  }
}
