package io.github.readfall.rules.order;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Fix;
import io.github.readfall.base.finding.Phrase;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.Region;
import io.github.readfall.base.geom.RegionIndex;
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
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A balloon in another panel than its own, or no nearer to its own than to another. */
final class WrongPanel implements Rule {

  /**
   * Another panel with the better claim to a balloon.
   *
   * @param inside true if the balloon's middle is inside it
   * @param ownPx distance of the balloon, or of its middle if inside, from its own panel
   * @param otherPx distance from the other
   */
  private record Claim(PanelBox other, boolean inside, double ownPx, double otherPx) {}

  @Override
  public RuleSpec spec() {
    return RuleSpec.WRONG_PANEL;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    RegionIndex<PanelBox> index = RegionIndex.of(galley.panels(), PanelBox::box);
    ReadingOrder order = strip.order();
    return IntStream.range(0, galley.balloons().size())
        .boxed()
        .flatMap(
            balloon ->
                claim(galley.balloons().get(balloon), galley, index).stream()
                    .map(claim -> finding(balloon, claim, galley, order)));
  }

  private static Optional<Claim> claim(
      PlacedBalloon balloon, Galley galley, RegionIndex<PanelBox> index) {
    Optional<PanelBox> own = galley.panel(balloon.panel());
    if (own.isEmpty() || isMeant(balloon, own.get().box())) {
      return Optional.empty();
    }
    Box box = own.get().box();
    double ownPx = distancePx(balloon, box);
    return index.near(balloon.box().grownBy(ownPx)).stream()
        .filter(other -> !box.covers(other.box()) && !other.box().covers(box))
        .filter(other -> !leadsInFrom(other.box(), balloon, box, galley))
        .flatMap(other -> claim(balloon, box, ownPx, other).stream())
        .min(Comparator.comparingDouble(Claim::otherPx));
  }

  private static Optional<Claim> claim(
      PlacedBalloon balloon, Box own, double ownPx, PanelBox other) {
    XY middle = balloon.box().centre();
    if (other.box().covers(middle) && !own.covers(middle)) {
      double awayPx = own.distanceTo(new Box(middle.x(), middle.y(), 0, 0));
      return Optional.of(new Claim(other, true, awayPx, 0));
    }
    double otherPx = distancePx(balloon, other.box());
    return ownPx > 0 && !NumberText.isShort(ownPx, otherPx)
        ? Optional.of(new Claim(other, false, ownPx, otherPx))
        : Optional.empty();
  }

  private static double distancePx(PlacedBalloon balloon, Box panel) {
    return panel.covers(balloon.box().centre()) ? 0 : balloon.body().distanceTo(Region.of(panel));
  }

  /** Marked so, an effect across the border, or a caption flush with the border from outside. */
  private static boolean isMeant(PlacedBalloon balloon, Box own) {
    Box box = balloon.box();
    boolean docked =
        Deliberate.isDocked(balloon, own.y() - box.bottom())
            || Deliberate.isDocked(balloon, own.bottom() - box.y())
            || Deliberate.isDocked(balloon, own.x() - box.right())
            || Deliberate.isDocked(balloon, own.right() - box.x());
    boolean touches = box.grownBy(Deliberate.DOCKED_PX).meets(own);
    return balloon.bleed() || (touches && (docked || balloon.isUnboxedEffect()));
  }

  /** Returns true if it leads in to its panel from the one right above. */
  private static boolean leadsInFrom(Box other, PlacedBalloon balloon, Box own, Galley galley) {
    return Deliberate.leadsIn(balloon, galley)
        && other.y() < own.y()
        && galley.panels().stream()
            .map(PanelBox::box)
            .noneMatch(between -> between.y() >= other.bottom() && between.bottom() <= own.y());
  }

  private Finding finding(int index, Claim claim, Galley galley, ReadingOrder order) {
    PlacedBalloon balloon = galley.balloons().get(index);
    Optional<XY> place = PlaceInPanel.of(index, galley, order);
    String name = BalloonFinding.name(balloon.set());
    String own = "panel " + balloon.panel();
    String other = "panel " + claim.other().panel();
    String message =
        claim.inside()
            ? name + " belongs to " + own + ", but its middle is in " + other + "."
            : name
                + (" is " + NumberText.up(claim.ownPx(), 0) + " px from " + own + ", its own, and ")
                + (NumberText.down(claim.otherPx(), 0) + " px from " + other + ".");
    Phrase advice =
        place
            .map(to -> new Fix.Move(balloon.id(), to).sentence())
            .orElse(
                Phrase.of("Move ")
                    .balloon(balloon.id())
                    .then(" into " + own + ", or its cue to " + other + "."));
    Finding finding =
        BalloonFinding.of(balloon.set(), RuleSpec.WRONG_PANEL, Phrase.of(message), advice)
            .measured(claim.ownPx(), claim.otherPx(), RuleSpec.WRONG_PANEL.unit())
            .at(balloon.box());
    return place.map(to -> finding.withFix(new Fix.Move(balloon.id(), to))).orElse(finding);
  }
}
