package io.github.readfall.plan.place;

/**
 * What a place costs. A rule that may not be broken costs so much that it is broken only where
 * there is no other way; all else are wishes, in the weight they have against each other. House
 * defaults, no source.
 */
final class Costs {

  /** Breaking a rule: more than all wishes of a long episode together. */
  static final double HARD = 1e6;

  /** A quarter of the panel's height away from where the words would be evenly spread. */
  static final double UNEVEN = 1.0;

  /** The same where a mouth is known and matters more. */
  static final double UNEVEN_BY_MOUTH = 0.3;

  /** Half the panel's width away from the speaker's side. */
  static final double ASIDE = 0.9;

  /** Words at the panel's very top, before anything of the picture. */
  static final double BEFORE_PICTURE = 0.5;

  /** Across the panel's lower border, or in the gutter. */
  static final double IN_GUTTER = 0.7;

  /** Over art that is full of detail. */
  static final double COVERED = 1.5;

  /** Two balloons beside each other. */
  static final double ABREAST = 1.2;

  /** The panel's height away from the mouth. */
  static final double FAR_FROM_MOUTH = 1.5;

  /** Below the mouth that speaks. */
  static final double BELOW_MOUTH = 0.8;

  /** How much of the panel is seen before the first words, as a share of its height. */
  static final double PICTURE_FIRST = 0.12;

  /** The same as a share of its width, where that is less: as much as the plan leaves free. */
  static final double PICTURE_FIRST_OF_WIDTH = 0.15;

  private Costs() {}
}
