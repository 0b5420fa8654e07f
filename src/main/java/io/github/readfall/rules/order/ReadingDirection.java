package io.github.readfall.rules.order;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Phrase;
import io.github.readfall.lettering.style.ReadingSide;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.strip.galley.Galley;
import java.util.List;
import java.util.stream.Stream;

/**
 * A language that is read from the one side on a strip that is read from the other: said once, so
 * that it was meant.
 */
final class ReadingDirection implements Rule {

  @Override
  public RuleSpec spec() {
    return RuleSpec.DIRECTION;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    ReadingSide side = galley.style().strip().reads();
    List<SetBalloon> against =
        galley.set().balloons().stream()
            .filter(balloon -> balloon.language().rightToLeft() && side == ReadingSide.LTR)
            .toList();
    return against.isEmpty() ? Stream.empty() : Stream.of(finding(against));
  }

  private Finding finding(List<SetBalloon> balloons) {
    String tag = balloons.get(0).language().tag();
    return BalloonFinding.of(
        balloons,
        RuleSpec.DIRECTION,
        Phrase.of("The words are read from the right, and the strip from the left."),
        Phrase.of(
                "Leave it where the art is drawn to be read from the left; where it is turned"
                    + " round, ")
            .either(
                "write reads = \"rtl\" under [languages." + tag + "]",
                "say that the strip is read from the right in this language,")
            .then(" in ")
            .houseStyle()
            .then("."));
  }
}
