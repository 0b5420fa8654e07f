package io.github.readfall.type.text;

/** How a language makes a word stand out. */
public enum Stress {
  /** It leans; a strong word is bold as well. */
  LEAN,
  /**
   * It is bold and stands upright: letters that fill a square or join their neighbours do not lean
   * (common practice).
   */
  WEIGHT
}
