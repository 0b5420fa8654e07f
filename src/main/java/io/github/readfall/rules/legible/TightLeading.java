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
 * Lines so close that the eye strays from one to the next: the space between them, from baseline to
 * the capitals below, is less than half a character's height (U.S. NRC NUREG-0700 Rev. 3,
 * 11.4.1.5-7).
 */
final class TightLeading implements Rule {

  @Override
  public RuleSpec spec() {
    return RuleSpec.LEADING;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    SetEpisode episode = galley.set();
    double limit = RuleSpec.LEADING.limitIn(episode.style());
    return episode.balloons().stream()
        .filter(balloon -> balloon.lines().size() > 1)
        .filter(balloon -> NumberText.isShort(space(balloon), limit))
        .map(balloon -> finding(balloon, limit, episode));
  }

  /** The space between two lines, in heights of a character. */
  private static double space(SetBalloon balloon) {
    return balloon.leadingPx() / balloon.characterPx() - 1;
  }

  private Finding finding(SetBalloon balloon, double limit, SetEpisode episode) {
    double space = space(balloon);
    double leadingEm = episode.style().lettering().leadingEm();
    String message =
        "In "
            + BalloonFinding.name(balloon)
            + " the space between lines is "
            + NumberText.down(space, 2)
            + " of a character's height, less than "
            + NumberText.up(limit, 2)
            + ".";
    Phrase advice =
        Phrase.of("Raise ")
            .either("leading under [lettering] in ", "the line spacing in ")
            .houseStyle()
            .then(" from " + NumberText.down(leadingEm, 2))
            .then(" to " + NumberText.up(leadingEm * (1 + limit) / (1 + space), 2) + ".");
    return BalloonFinding.of(balloon, RuleSpec.LEADING, Phrase.of(message), advice)
        .measured(space, limit, RuleSpec.LEADING.unit());
  }
}
