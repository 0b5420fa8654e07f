package io.github.readfall.type.balloon;

/**
 * Powers of lengths by a superellipse's exponent n. The usual exponents are computed by roots,
 * which is several times faster than the general power.
 *
 * @param n the exponent; at least 1
 * @param unitArea area for half a width and half a height of 1: {@code 4 Γ(1 + 1/n)² / Γ(1 + 2/n)},
 *     e.g. π for an ellipse
 */
record Powers(double n, double unitArea) {

  private static final double USUAL = OutlineStyle.SQUARENESS;
  private static final int SECTORS = 1024;

  /** The bits of the number 1. */
  private static final long ONE = 0x3FF0000000000000L;

  private static final int STEPS = 3;

  /** Roots of less are nothing: far under a pixel. */
  private static final double LEAST = 1e-60;

  private static final Powers OF_USUAL = new Powers(USUAL, unitArea(USUAL));
  private static final Powers OF_ELLIPSE = new Powers(2, Math.PI);

  /** The powers by an exponent. */
  static Powers by(double exponent) {
    if (exponent == USUAL) {
      return OF_USUAL;
    }
    return exponent == 2 ? OF_ELLIPSE : new Powers(exponent, unitArea(exponent));
  }

  /** Sums sectors round the middle, which is exact to nine digits. */
  private static double unitArea(double n) {
    double sum = 0;
    double step = Math.PI / 2 / SECTORS;
    for (int i = 0; i < SECTORS; i++) {
      double c = StrictMath.cos((i + 0.5) * step);
      double s = StrictMath.sin((i + 0.5) * step);
      double power = StrictMath.pow(c, n) + StrictMath.pow(s, n);
      sum += StrictMath.pow(power, -2 / n);
    }
    return 2 * step * sum;
  }

  /** {@code value^n} of a value that is not negative. */
  double of(double value) {
    if (n == USUAL) {
      return value * value * Math.sqrt(value);
    }
    return n == 2 ? value * value : StrictMath.pow(value, n);
  }

  /** {@code value^(n-1)}: the slope of {@link #of}, less its factor n. */
  double slope(double value) {
    if (n == USUAL) {
      return value * Math.sqrt(value);
    }
    return n == 2 ? value : StrictMath.pow(value, n - 1);
  }

  /** {@code value^(n/2)}. */
  double half(double value) {
    if (n == USUAL) {
      return value * Math.sqrt(Math.sqrt(value));
    }
    return n == 2 ? value : StrictMath.pow(value, n / 2);
  }

  /** {@code value^(1/n)} of a value that is not negative. */
  double root(double value) {
    if (n == USUAL) {
      return fifthRoot(value * value);
    }
    return n == 2 ? Math.sqrt(value) : StrictMath.pow(value, 1 / n);
  }

  /** {@code value^(2/n)}: undoes {@link #half}. */
  double unhalf(double value) {
    if (n == USUAL) {
      double root = root(value);
      return root * root;
    }
    return n == 2 ? value : StrictMath.pow(value, 2 / n);
  }

  /**
   * By Halley's method, from the fifth of the logarithm that a number's own exponent gives: each
   * step triples the digits.
   */
  private static double fifthRoot(double value) {
    if (value < LEAST || value == Double.POSITIVE_INFINITY) {
      return value < LEAST ? 0 : value;
    }
    long bits = Double.doubleToRawLongBits(value);
    double root = Double.longBitsToDouble((bits - ONE) / 5 + ONE);
    for (int step = 0; step < STEPS; step++) {
      double fifth = root * root;
      fifth = fifth * fifth * root;
      root *= (2 * fifth + 3 * value) / (3 * fifth + 2 * value);
    }
    return root;
  }
}
