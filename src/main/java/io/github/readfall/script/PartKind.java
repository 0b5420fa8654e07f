package io.github.readfall.script;

/** What a stretch of a script's line is. */
public enum PartKind {
  /** PANEL or SCENE, as renamed. */
  KEYWORD,
  /** The number or name behind PANEL. */
  LABEL,
  /** A shot size or another hint that is understood. */
  HINT,
  /** What else stands behind PANEL or SCENE. */
  HEADING,
  /** What a header is called. */
  HEADER_KEY,
  /** What a header says. */
  HEADER_VALUE,
  /** Who speaks. */
  SPEAKER,
  /** How, in brackets, and understood. */
  MANNER,
  /** In the same place, but not understood. */
  OTHER_MANNER,
  /** Words that are lettered. */
  TEXT,
  /** Words that stand out as {@code *these*}. */
  STRONG,
  /** Words that stand out as {@code _these_}. */
  SLANTED,
  /** Words that stand out in both ways. */
  STRONG_SLANTED,
  /** A sign that opens or closes emphasis. */
  SIGN,
  /** A forced break. */
  BREAK,
  /** A sign that is meant as written, with the backslash before it. */
  ESCAPE,
  /** From {@code //} on. */
  NOTE,
  /** What is drawn. */
  DESCRIPTION,
  /** What belongs to nothing. */
  STRAY;

  /** Words of a cue that stand out so. */
  public static PartKind words(boolean strong, boolean slanted) {
    if (strong) {
      return slanted ? STRONG_SLANTED : STRONG;
    }
    return slanted ? SLANTED : TEXT;
  }

  /** Whether this is lettered, signs of the markup apart. */
  public boolean isLettered() {
    return this == TEXT
        || this == STRONG
        || this == SLANTED
        || this == STRONG_SLANTED
        || this == ESCAPE;
  }
}
