package io.github.readfall.job;

/**
 * The time that each stage took, in milliseconds.
 *
 * @param readMs reading files
 * @param shapeMs shaping and measuring text
 * @param fitMs choosing breaks and outlines
 * @param placeMs planning panels, and placing balloons and cuts
 * @param checkMs checking the rules
 */
public record Timings(double readMs, double shapeMs, double fitMs, double placeMs, double checkMs) {

  /** The same with another time for placing. */
  Timings withPlacing(double otherPlaceMs) {
    return new Timings(readMs, shapeMs, fitMs, otherPlaceMs, checkMs);
  }
}
