package io.github.readfall.type.balloon;

import java.util.SplittableRandom;

/**
 * The measures an outline is drawn with.
 *
 * @param marginPx kept between text and outline, the measure of a box's corners; not negative
 * @param capitalPx height of a capital of its text, the measure of bumps, spikes and waves;
 *     positive
 * @param squareness exponent of the superellipse that round outlines are; 2 for an ellipse
 * @param seed varies what is drawn uneven; the same seed draws the same
 */
public record OutlineStyle(double marginPx, double capitalPx, double squareness, long seed) {

  /** Piet Hein's exponent, between an ellipse and a box. */
  public static final double SQUARENESS = 2.5;

  /** Numbers to draw by, the same each time. */
  SplittableRandom random() {
    return new SplittableRandom(seed);
  }

  /** The same measures for the cue with an id. */
  public OutlineStyle seededBy(String id) {
    return new OutlineStyle(marginPx, capitalPx, squareness, id.hashCode());
  }
}
