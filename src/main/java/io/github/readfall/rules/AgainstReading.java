package io.github.readfall.rules;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.lettering.style.ReadingSide;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.strip.galley.Galley;
import java.util.List;
import java.util.stream.Stream;

/**
 * A language that is read from the one side on a strip that is read from the other: said once, so
 * that it was meant.
 */
final class AgainstReading implements Rule {

  @Override
  public String id() {
    return "language/direction";
  }

  @Override
  public Severity severity() {
    return Severity.NOTE;
  }

  @Override
  public Stream<Finding> check(Galley galley) {
    ReadingSide strip = galley.style().strip().reads();
    List<SetBalloon> against =
        galley.set().balloons().stream()
            .filter(balloon -> balloon.language().rightToLeft() && strip == ReadingSide.LTR)
            .toList();
    return against.isEmpty() ? Stream.empty() : Stream.of(finding(against));
  }

  private Finding finding(List<SetBalloon> balloons) {
    String tag = balloons.get(0).language().tag();
    return Fault.in(
        balloons,
        this,
        "The words are read from the right, and the strip from the left.",
        "Leave it where the art is drawn to be read from the left; where it is turned round, write"
            + " reads = \"rtl\" under [languages."
            + tag
            + "] in series.toml.");
  }
}
