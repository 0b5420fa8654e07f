package io.github.readfall.type.text;

import io.github.readfall.type.font.Ornament;

/** The ways in which a language emphasises a word. */
public enum Stress {
  /** It leans; a strong word is bold as well. */
  LEAN(Ornament.NONE),
  /**
   * Bold and upright: letters that fill a square or join their neighbours are not slanted (common
   * practice).
   */
  WEIGHT(Ornament.NONE),
  /** Bold, or with a dot over each letter in a face without bold. */
  DOTS_OVER(Ornament.DOTS_OVER),
  /** Bold, or with a dot under each letter in a face without bold. */
  DOTS_UNDER(Ornament.DOTS_UNDER);

  private final Ornament dots;

  Stress(Ornament dots) {
    this.dots = dots;
  }

  /** The dots of a word that no bold face can show; none if it is set larger instead. */
  public Ornament dots() {
    return dots;
  }
}
