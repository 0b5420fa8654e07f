package io.github.readfall.rules.space;

import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.Deliberate;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.rules.model.PanelEdge;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.stream.Stream;

/**
 * An outline and a panel border that it just touches.
 *
 * @param crossingPx how far it crosses; below 0 it stays clear by so much
 */
record BorderTouch(PlacedBalloon balloon, PanelEdge border, double crossingPx) {

  /** The borders of a strip that a balloon just touches; the balloon need not be on the strip. */
  static Stream<BorderTouch> of(PlacedBalloon balloon, CheckedStrip strip) {
    if (Deliberate.runsOff(balloon) || Deliberate.leadsIn(balloon, strip.galley())) {
      return Stream.empty();
    }
    double limitPx = strip.limitPx(RuleSpec.TANGENT);
    return strip.borders().near(balloon.body().bounds().grownBy(limitPx)).stream()
        .flatMap(
            border ->
                border.crossingPx(balloon.body()).stream()
                    .mapToObj(px -> new BorderTouch(balloon, border, px)))
        .filter(touch -> NumberText.isShort(touch.px(), limitPx))
        .filter(touch -> !Deliberate.isDocked(balloon, touch.crossingPx()));
  }

  /** The distance between outline and border, whether it crosses or not. */
  double px() {
    return Math.abs(crossingPx);
  }
}
