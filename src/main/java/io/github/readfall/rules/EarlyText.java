package io.github.readfall.rules;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Fix;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.plan.order.ReadingOrder;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A balloon that is read before its picture is seen: its middle lies above its panel. */
final class EarlyText implements Rule {

  @Override
  public String id() {
    return "flow/text-before-picture";
  }

  @Override
  public Severity severity() {
    return Severity.WARNING;
  }

  @Override
  public Stream<Finding> check(Galley galley) {
    ReadingOrder order = ReadingOrder.of(galley);
    return IntStream.range(0, galley.balloons().size())
        .filter(balloon -> isAbove(galley.balloons().get(balloon), galley))
        .filter(balloon -> !isMeant(galley.balloons().get(balloon), galley))
        .mapToObj(balloon -> finding(balloon, galley, order));
  }

  private static boolean isAbove(PlacedBalloon balloon, Galley galley) {
    double middle = balloon.box().centre().y();
    return panel(balloon, galley)
        .filter(panel -> NumberWords.isShort(middle, panel.y()))
        .isPresent();
  }

  private static boolean isMeant(PlacedBalloon balloon, Galley galley) {
    boolean touches = panel(balloon, galley).filter(balloon.box()::meets).isPresent();
    return Deliberate.leadsIn(balloon, galley)
        || balloon.bleed()
        || (balloon.isUnboxedEffect() && touches);
  }

  private static Optional<Box> panel(PlacedBalloon balloon, Galley galley) {
    return galley.panel(balloon.panel()).map(PanelBox::box);
  }

  private Finding finding(int index, Galley galley, ReadingOrder order) {
    PlacedBalloon balloon = galley.balloons().get(index);
    Box panel = panel(balloon, galley).orElseThrow();
    double abovePx = panel.y() - balloon.box().centre().y();
    Optional<XY> place = PlaceInPanel.of(index, galley, order);
    String message =
        "The middle of "
            + Fault.name(balloon.set())
            + " lies "
            + NumberWords.up(abovePx, 0)
            + " px above panel "
            + balloon.panel()
            + ", so it is read before its picture is seen.";
    String advice =
        place
            .map(to -> new Fix.Move(balloon.id(), to).sentence())
            .orElse("Move " + balloon.id() + " down into its panel, or letter it as a caption.");
    Finding finding =
        Fault.in(balloon.set(), this, message, advice)
            .measured(abovePx, 0, "px")
            .at(balloon.box().union(panel));
    return place.map(to -> finding.withFix(new Fix.Move(balloon.id(), to))).orElse(finding);
  }
}
