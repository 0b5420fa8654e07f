package io.github.readfall.rules.model;

import io.github.readfall.base.finding.Phrase;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.type.balloon.ShapeKind;
import java.util.Optional;

/** Recognises what a letterer does on purpose, and no rule objects to. */
public final class Deliberate {

  /** Distance up to which edges are meant to be one: what rounding to whole pixels leaves. */
  public static final double DOCKED_PX = 1;

  /** The end of an advice, for a balloon that may run off the strip. */
  public static final Phrase ALLOWED =
      Phrase.of(", or ")
          .either("mark it bleed in layout.json", "ignore this finding")
          .then(" if it is meant to run off.");

  private Deliberate() {}

  /**
   * Returns true if it may leave its panel and the strip: marked {@code bleed}, or without an
   * outline.
   */
  public static boolean runsOff(PlacedBalloon balloon) {
    return balloon.bleed() || balloon.isUnboxedEffect();
  }

  /** Returns true for a caption with straight edges, which may be flush with a border. */
  public static boolean mayDock(PlacedBalloon balloon) {
    ShapeKind shape = balloon.set().look().shape();
    return (balloon.isCaption() && !shape.isRound()) || shape == ShapeKind.CAPTION_BOX;
  }

  /** Returns true if its edge, at this distance from another, is meant to be flush with it. */
  public static boolean isDocked(PlacedBalloon balloon, double apartPx) {
    return mayDock(balloon) && Math.abs(apartPx) <= DOCKED_PX;
  }

  /** Returns true if it is before its panel on purpose, on the border or above it. */
  public static boolean leadsIn(PlacedBalloon balloon, Galley galley) {
    Optional<Double> topPx = galley.panel(balloon.panel()).map(panel -> panel.box().y());
    return balloon.mayLeadIn() && topPx.filter(top -> balloon.box().centre().y() < top).isPresent();
  }
}
