package io.github.readfall.type.text;

/** The height of a face that decides how large a script is lettered. */
public enum SizeBasis {
  /** The capital; and the small x, if lettering is not all capitals. */
  CAPITAL,
  /** The full ideograph, or the full syllable in Korean. */
  IDEOGRAPH,
  /** The em of the voice's Latin face, times the language's own factor. */
  EM
}
