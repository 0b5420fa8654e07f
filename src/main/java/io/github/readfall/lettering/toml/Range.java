package io.github.readfall.lettering.toml;

/**
 * The numbers that a key of series.toml can have, both ends included.
 *
 * @param unit in the plural; empty where it has none
 * @param isWhole whether it must be a whole number
 */
public record Range(double least, double most, String unit, boolean isWhole) {

  /** Of the limit of any rule, in the unit of the rule. */
  public static final Range LIMIT = new Range(0, 1e9, "", false);
}
