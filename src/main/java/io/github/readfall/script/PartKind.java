package io.github.readfall.script;

/** The kind of a stretch of a script's line. */
public enum PartKind {
  /** PANEL or SCENE, as renamed. */
  KEYWORD,
  /** The number or name after PANEL. */
  LABEL,
  /** A shot size or another hint that is understood. */
  HINT,
  /** The rest after PANEL or SCENE. */
  HEADING,
  /** The key of a header. */
  HEADER_KEY,
  /** The value of a header. */
  HEADER_VALUE,
  /** The speaker. */
  SPEAKER,
  /** A manner in brackets that is understood. */
  MANNER,
  /** A manner that is not understood. */
  OTHER_MANNER,
  /** Words that are lettered. */
  TEXT,
  /** Words emphasised as {@code *these*}. */
  STRONG,
  /** Words emphasised as {@code _these_}. */
  SLANTED,
  /** Words emphasised in both ways. */
  STRONG_SLANTED,
  /** A sign that opens or closes emphasis. */
  SIGN,
  /** A forced break. */
  BREAK,
  /** A sign that is meant as written, with the backslash before it. */
  ESCAPE,
  /** From {@code //} on. */
  NOTE,
  /** A description of the picture. */
  DESCRIPTION,
  /** Text that belongs to nothing. */
  STRAY;

  /** Words of a cue with this emphasis. */
  public static PartKind words(boolean strong, boolean slanted) {
    if (strong) {
      return slanted ? STRONG_SLANTED : STRONG;
    }
    return slanted ? SLANTED : TEXT;
  }

  /** Returns true if this is lettered, without the signs of the markup. */
  public boolean isLettered() {
    return this == TEXT
        || this == STRONG
        || this == SLANTED
        || this == STRONG_SLANTED
        || this == ESCAPE;
  }
}
