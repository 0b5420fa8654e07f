package io.github.readfall.rules;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.lettering.typeset.GivenFit;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.stream.Stream;

/**
 * Text that is inside the outline that a layout gives it, but nearer to it than its margin. The
 * margin is the series' own; that it is kept is common practice.
 */
final class CrampedText implements Rule {

  @Override
  public String id() {
    return "space/tight";
  }

  @Override
  public Severity severity() {
    return Severity.WARNING;
  }

  @Override
  public Stream<Finding> check(Galley galley) {
    return galley.balloons().stream()
        .flatMap(
            balloon ->
                balloon.set().given().stream()
                    .filter(given -> !given.fits() && given.clearPx() >= 0)
                    .map(given -> finding(balloon, given, galley)));
  }

  private Finding finding(PlacedBalloon balloon, GivenFit given, Galley galley) {
    double marginPx = balloon.set().marginPx();
    String message =
        "The text of "
            + Fault.name(balloon.set())
            + " comes within "
            + NumberWords.down(given.clearPx(), 1)
            + " px of its outline, nearer than its margin of "
            + NumberWords.up(marginPx, 1)
            + " px.";
    String advice = OwnSize.cut(balloon, given) + "make the balloon " + OwnSize.grown(given) + ".";
    return OwnSize.mended(balloon, given, galley, Fault.in(balloon.set(), this, message, advice))
        .measured(given.clearPx(), marginPx, "px");
  }
}
