package io.github.readfall.type.text;

/** The ways in which a language emphasises a word. */
public enum Stress {
  /** It leans; a strong word is bold as well. */
  LEAN,
  /**
   * Bold and upright: letters that fill a square or join their neighbours are not slanted (common
   * practice).
   */
  WEIGHT
}
