package io.github.readfall.rules.space;

import io.github.readfall.base.geom.Box;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.Optional;

/** Tests whether a strip has room for a balloon in some place. */
public final class FreeRoom {

  private FreeRoom() {}

  /**
   * Returns true if a balloon would be inside its panel and the strip, clear of other balloons, of
   * borders and of areas to keep clear.
   *
   * @param balloon at the place asked about; the strip's own balloon of the same cue is ignored
   */
  public static boolean isFree(PlacedBalloon balloon, CheckedStrip strip) {
    return isInside(balloon, strip.galley())
        && BalloonGap.isClear(balloon, strip)
        && BorderTouch.of(balloon, strip).findAny().isEmpty()
        && Covering.of(balloon, strip).findAny().isEmpty()
        && Crossing.of(balloon, strip).findAny().isEmpty();
  }

  /** Returns whether a balloon has a tail that neither covers nor crosses anything. */
  static boolean isTailFree(PlacedBalloon balloon, CheckedStrip strip) {
    return !balloon.tails().isEmpty()
        && Covering.of(balloon, strip).findAny().isEmpty()
        && Crossing.of(balloon, strip).findAny().isEmpty();
  }

  /** Returns whether it is inside its panel's width and height, and the strip's safe margin. */
  private static boolean isInside(PlacedBalloon balloon, Galley galley) {
    double marginPx = marginPx(galley);
    Box strip = galley.extent();
    Box safe =
        Box.ofEdges(marginPx, 0, Math.max(marginPx, strip.right() - marginPx), strip.bottom());
    Optional<Box> panel = galley.panel(balloon.panel()).map(PanelBox::box);
    return safe.covers(balloon.box())
        && strip.covers(balloon.reach())
        && panel.filter(box -> !box.covers(balloon.box().centre())).isEmpty();
  }

  /** The least distance of a balloon from either side of the strip. */
  static double marginPx(Galley galley) {
    return galley.style().limit(RuleSpec.MARGIN.id(), galley.style().strip().safeMarginPx());
  }
}
