package io.github.readfall.rules.space;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.rules.model.PanelEdge;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.strip.galley.Galley;
import java.util.Comparator;
import java.util.stream.Stream;

/**
 * An outline that just touches a border or another outline: it neither clears it nor crosses it.
 */
final class TangentOutline implements Rule {

  @Override
  public RuleSpec spec() {
    return RuleSpec.TANGENT;
  }

  /** The border that each balloon touches most, then the balloons that it touches. */
  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    Stream<Finding> borders =
        galley.balloons().stream()
            .flatMap(balloon -> BorderTouch.of(balloon, strip).min(BY_LENGTH).stream())
            .map(touch -> finding(touch, strip));
    Stream<Finding> outlines =
        BalloonGap.of(strip, BalloonGap.Judge.TANGENT).map(gap -> finding(gap, strip));
    return Stream.concat(borders, outlines);
  }

  private static final Comparator<BorderTouch> BY_LENGTH =
      Comparator.comparingDouble(BorderTouch::px);

  private Finding finding(BorderTouch touch, CheckedStrip strip) {
    double dp = strip.dp(touch.px());
    double limitPx = strip.limitPx(RuleSpec.TANGENT);
    double limitDp = strip.dp(limitPx);
    boolean crosses = touch.crossingPx() > 0;
    String message =
        "The outline of "
            + BalloonFinding.name(touch.balloon().set())
            + " just touches a panel's border: it "
            + (crosses ? "crosses it by " : "stays clear by ")
            + NumberText.down(dp, 1)
            + " dp, less than "
            + NumberText.up(limitDp, 1)
            + ".";
    String advice =
        "Move it "
            + NumberText.upPx(limitPx + touch.crossingPx())
            + " px off the border, or well across it.";
    Finding finding =
        BalloonFinding.of(touch.balloon().set(), RuleSpec.TANGENT, message, advice)
            .measured(dp, limitDp, RuleSpec.TANGENT.unit())
            .at(place(touch));
    return FixFinder.withFix(finding, touch.balloon(), shifts(touch, limitPx), strip);
  }

  /** The part of the border at the outline. */
  private static Box place(BorderTouch touch) {
    Box body = touch.balloon().body().bounds();
    PanelEdge border = touch.border();
    return border.upright()
        ? Box.ofEdges(border.at(), body.y(), border.at(), body.bottom())
        : Box.ofEdges(body.x(), border.at(), body.right(), border.at());
  }

  /** Off the border, or well across it. */
  private static Stream<XY> shifts(BorderTouch touch, double limitPx) {
    double side = touch.border().sideOf(touch.balloon().body().bounds());
    double offPx = limitPx + touch.crossingPx() + FixFinder.SLACK_PX;
    double overPx = limitPx - touch.crossingPx() + FixFinder.SLACK_PX;
    return Stream.of(touch.border().across(side * offPx), touch.border().across(-side * overPx));
  }

  private Finding finding(BalloonGap gap, CheckedStrip strip) {
    double dp = strip.dp(gap.px());
    double limitDp =
        Math.min(BalloonGap.TOUCH_DP, RuleSpec.TANGENT.limitIn(strip.galley().style()));
    String message =
        "The outlines of "
            + BalloonFinding.name(gap.first().set())
            + " and "
            + BalloonFinding.name(gap.second().set())
            + " touch.";
    double roomPx = strip.limitPx(RuleSpec.CROWDED);
    String advice =
        "Move them "
            + NumberText.upPx(roomPx - gap.px() + gap.depthPx())
            + " px apart, or join them if one speaker goes on.";
    Finding finding =
        BalloonFinding.of(
                gap.both().stream().map(balloon -> balloon.set()).toList(),
                RuleSpec.TANGENT,
                message,
                advice)
            .measured(dp, limitDp, RuleSpec.TANGENT.unit())
            .at(gap.box());
    return FixFinder.withFix(finding, gap, roomPx, strip);
  }
}
