package io.github.readfall.rules;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.strip.galley.Galley;
import java.util.stream.Stream;

/**
 * Lines so close that the eye slips from one to the next: the space between them, from baseline to
 * the capitals below, is less than half a character's height (U.S. NRC NUREG-0700 Rev. 3,
 * 11.4.1.5-7).
 */
final class TightLeading implements Rule {

  static final String ID = "legible/leading";

  static final double LIMIT = 0.5;

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
    double limit = episode.style().limit(id(), LIMIT);
    return episode.balloons().stream()
        .filter(balloon -> balloon.lines().size() > 1)
        .filter(balloon -> NumberWords.isShort(space(balloon), limit))
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
            + Fault.name(balloon)
            + " the space between lines is "
            + NumberWords.down(space, 2)
            + " of a character's height, less than "
            + NumberWords.up(limit, 2)
            + ".";
    String advice =
        "Raise leading under [lettering] in series.toml from "
            + NumberWords.down(leadingEm, 2)
            + " to "
            + NumberWords.up(leadingEm * (1 + limit) / (1 + space), 2)
            + ".";
    return Fault.in(balloon, this, message, advice).measured(space, limit, "character heights");
  }
}
