package io.github.readfall.art.panels;

/** What is special about a made-up strip. */
enum DrawnKind {
  WHITE,
  TINTED,
  BLACK_GUTTERS,
  GRADIENT,
  FULL_BLEED,
  ROWS,
  NARROW_GUTTERS,
  WHITE_AREAS,
  NOISE(true),
  JPEG(true),
  BORDERLESS(true),
  SLANTED(true),
  WOBBLY(true),
  INSETS(true),
  BALLOONS(true),
  MIXED(true);

  private final boolean hard;

  DrawnKind() {
    this(false);
  }

  DrawnKind(boolean hard) {
    this.hard = hard;
  }

  /** Whether a strip of this kind is hard to read. */
  boolean isHard() {
    return hard;
  }
}
