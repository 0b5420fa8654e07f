package io.github.readfall.rules.order;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Fix;
import io.github.readfall.base.finding.Phrase;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.plan.order.ReadingOrder;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.Deliberate;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A balloon that is read before its picture is seen: its middle is above its panel. */
final class EarlyText implements Rule {

  @Override
  public RuleSpec spec() {
    return RuleSpec.TEXT_BEFORE_PICTURE;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    ReadingOrder order = strip.order();
    return IntStream.range(0, galley.balloons().size())
        .filter(balloon -> isAbove(galley.balloons().get(balloon), galley))
        .filter(balloon -> !isMeant(galley.balloons().get(balloon), galley))
        .mapToObj(balloon -> finding(balloon, galley, order));
  }

  private static boolean isAbove(PlacedBalloon balloon, Galley galley) {
    double middle = balloon.box().centre().y();
    return panel(balloon, galley)
        .filter(panel -> NumberText.isShort(middle, panel.y()))
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
            + BalloonFinding.name(balloon.set())
            + " is "
            + NumberText.up(abovePx, 0)
            + " px above panel "
            + balloon.panel()
            + ", so it is read before its picture is seen.";
    Phrase advice =
        place
            .map(to -> new Fix.Move(balloon.id(), to).sentence())
            .orElse(
                Phrase.of("Move ")
                    .balloon(balloon.id())
                    .then(" down into its panel, or letter it as a caption."));
    Finding finding =
        BalloonFinding.of(balloon.set(), RuleSpec.TEXT_BEFORE_PICTURE, Phrase.of(message), advice)
            .measured(abovePx, 0, RuleSpec.TEXT_BEFORE_PICTURE.unit())
            .at(balloon.box().union(panel));
    return place.map(to -> finding.withFix(new Fix.Move(balloon.id(), to))).orElse(finding);
  }
}
