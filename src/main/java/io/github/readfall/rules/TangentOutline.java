package io.github.readfall.rules;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.Comparator;
import java.util.stream.Stream;

/**
 * An outline that just touches a border or another outline: it neither clears it nor crosses it.
 */
final class TangentOutline implements Rule {

  static final String ID = "space/tangent";

  /** House default, no source: twice the line round a balloon and more. */
  static final double LIMIT_DP = 3;

  /**
   * An outline and a border that it just touches.
   *
   * @param crossingPx how far it crosses; below 0 it stays clear by so much
   */
  record Touch(PlacedBalloon balloon, PanelEdge border, double crossingPx) {
    double px() {
      return Math.abs(crossingPx);
    }
  }

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Severity severity() {
    return Severity.WARNING;
  }

  /** For each balloon the border that it touches most, then the balloons that it touches. */
  @Override
  public Stream<Finding> check(Galley galley) {
    Neighbourhood around = Neighbourhood.of(galley);
    Stream<Finding> borders =
        galley.balloons().stream()
            .flatMap(balloon -> touches(balloon, around).min(BY_LENGTH).stream())
            .map(touch -> finding(touch, around));
    Stream<Finding> outlines =
        BalloonGap.of(around, BalloonGap.Judge.TANGENT).map(gap -> finding(gap, around));
    return Stream.concat(borders, outlines);
  }

  private static final Comparator<Touch> BY_LENGTH = Comparator.comparingDouble(Touch::px);

  /** The borders that a balloon just touches, wherever it is. */
  static Stream<Touch> touches(PlacedBalloon balloon, Neighbourhood around) {
    if (Deliberate.runsOff(balloon) || Deliberate.leadsIn(balloon, around.galley())) {
      return Stream.empty();
    }
    double limitPx = around.limitPx(ID, LIMIT_DP);
    return around.borders().near(balloon.body().bounds().grownBy(limitPx)).stream()
        .flatMap(
            border ->
                border.crossingPx(balloon.body()).stream()
                    .mapToObj(px -> new Touch(balloon, border, px)))
        .filter(touch -> NumberWords.isShort(touch.px(), limitPx))
        .filter(touch -> !Deliberate.isDocked(balloon, touch.crossingPx()));
  }

  private Finding finding(Touch touch, Neighbourhood around) {
    double dp = around.dp(touch.px());
    double limitPx = around.limitPx(ID, LIMIT_DP);
    double limitDp = around.dp(limitPx);
    boolean crosses = touch.crossingPx() > 0;
    String message =
        "The outline of "
            + Fault.name(touch.balloon().set())
            + " just touches a panel's border: it "
            + (crosses ? "crosses it by " : "stays clear by ")
            + NumberWords.down(dp, 1)
            + " dp, less than "
            + NumberWords.up(limitDp, 1)
            + ".";
    String advice =
        "Move it "
            + Neighbourhood.upPx(limitPx + touch.crossingPx())
            + " px off the border, or well across it.";
    Finding finding =
        Fault.in(touch.balloon().set(), this, message, advice)
            .measured(dp, limitDp, "dp")
            .at(place(touch));
    return FreePlace.mended(finding, touch.balloon(), shifts(touch, limitPx), around);
  }

  /** The part of the border that the outline stands at. */
  private static Box place(Touch touch) {
    Box body = touch.balloon().body().bounds();
    PanelEdge border = touch.border();
    return border.upright()
        ? Box.ofEdges(border.at(), body.y(), border.at(), body.bottom())
        : Box.ofEdges(body.x(), border.at(), body.right(), border.at());
  }

  /** Off the border, or well across it. */
  private static Stream<XY> shifts(Touch touch, double limitPx) {
    double side = touch.border().sideOf(touch.balloon().body().bounds());
    double offPx = limitPx + touch.crossingPx() + FreePlace.SLACK_PX;
    double overPx = limitPx - touch.crossingPx() + FreePlace.SLACK_PX;
    return Stream.of(touch.border().across(side * offPx), touch.border().across(-side * overPx));
  }

  private Finding finding(BalloonGap gap, Neighbourhood around) {
    double dp = around.dp(gap.px());
    double limitDp = Math.min(BalloonGap.TOUCH_DP, around.galley().style().limit(ID, LIMIT_DP));
    String message =
        "The outlines of "
            + Fault.name(gap.first().set())
            + " and "
            + Fault.name(gap.second().set())
            + " touch.";
    double roomPx = around.limitPx(CrowdedBalloons.ID, CrowdedBalloons.LIMIT_DP);
    String advice =
        "Move them "
            + Neighbourhood.upPx(roomPx - gap.px() + gap.depthPx())
            + " px apart, or join them if one speaker goes on.";
    Finding finding =
        Fault.in(gap.both().stream().map(balloon -> balloon.set()).toList(), this, message, advice)
            .measured(dp, limitDp, "dp")
            .at(gap.box());
    return FreePlace.mended(finding, gap, roomPx, around);
  }
}
