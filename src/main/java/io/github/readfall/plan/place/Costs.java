package io.github.readfall.plan.place;

/**
 * The costs of places. A hard rule costs so much that it is broken only if there is no other way;
 * all others are wishes, weighed against each other. House defaults, no source.
 */
final class Costs {

  /** A broken hard rule: more than all wishes of a long episode together. */
  static final double HARD = 1e6;

  /** A quarter of the panel's height away from the place in an even spread. */
  static final double UNEVEN = 1.0;

  /** The same if a mouth is known and matters more. */
  static final double UNEVEN_BY_MOUTH = 0.3;

  /** Half the panel's width away from the speaker's side. */
  static final double ASIDE = 0.9;

  /** Words at the panel's very top, before anything of the picture. */
  static final double BEFORE_PICTURE = 0.5;

  /** Across the panel's lower border, or in the gutter. */
  static final double IN_GUTTER = 0.7;

  /** Over art full of detail. */
  static final double COVERED = 1.5;

  /** Two balloons beside each other. */
  static final double ABREAST = 1.2;

  /** The panel's height away from the mouth. */
  static final double FAR_FROM_MOUTH = 1.5;

  /** Below the mouth that speaks. */
  static final double BELOW_MOUTH = 0.8;

  /** Picture seen before the first words, as a share of the panel's height. */
  static final double PICTURE_FIRST = 0.12;

  /** The same as a share of its width, if that is less: as much as the plan leaves free. */
  static final double PICTURE_FIRST_OF_WIDTH = 0.15;

  private Costs() {}
}
