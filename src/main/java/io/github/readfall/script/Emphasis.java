package io.github.readfall.script;

/** The ways in which words are emphasised. */
public enum Emphasis {
  /** Written {@code *so*}. */
  STRONG,
  /** Written {@code _so_}: the other slant. */
  SLANTED,
  /** Written {@code *_so_*}. */
  STRONG_SLANTED;

  public static Emphasis of(boolean strong, boolean slanted) {
    if (strong) {
      return slanted ? STRONG_SLANTED : STRONG;
    }
    return SLANTED;
  }
}
