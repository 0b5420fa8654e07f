package io.github.readfall.proof;

/**
 * How long each stage took, in milliseconds.
 *
 * @param readMs reading files
 * @param shapeMs shaping and measuring text
 * @param fitMs choosing breaks and outlines
 * @param checkMs checking the rules
 */
public record Timings(double readMs, double shapeMs, double fitMs, double checkMs) {

  /** The same with more time for checking. */
  Timings withMoreChecks(double moreMs) {
    return new Timings(readMs, shapeMs, fitMs, checkMs + moreMs);
  }
}
