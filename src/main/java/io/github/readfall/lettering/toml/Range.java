package io.github.readfall.lettering.toml;

/**
 * The range of a number in series.toml, both ends included.
 *
 * @param unit in the plural; empty if it has none
 * @param isWhole true for whole numbers only
 */
public record Range(double least, double most, String unit, boolean isWhole) {

  /** Of the limit of any rule, in the unit of the rule. */
  public static final Range LIMIT = new Range(0, 1e9, "", false);
}
