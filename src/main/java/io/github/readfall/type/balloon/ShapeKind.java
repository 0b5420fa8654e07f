package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The outlines a balloon can have. A new one is a constant here and a way to draw it. */
public enum ShapeKind {
  /** Speech: a superellipse. */
  ELLIPSE,
  ROUNDED_BOX,
  /** Narration: square corners, no tail. */
  CAPTION_BOX,
  /** Shouting: spikes round a superellipse. */
  BURST,
  /** Thought: bumps round a superellipse. */
  CLOUD,
  /** A faint or eerie voice. */
  WAVY,
  /** A voice through a machine: a box with jagged edges. */
  ELECTRONIC,
  /** No outline: sound effects. */
  NONE;

  private static final double CORNER_MARGINS = 1.8; // house default, no source

  /**
   * The inner area that text keeps its margin from.
   *
   * @param squareness exponent of the superellipse that round ones are; 2 for an ellipse
   */
  public Enclosure enclosure(double squareness) {
    return switch (this) {
      case ELLIPSE, BURST, CLOUD, WAVY -> new SuperellipseEnclosure(squareness);
      case ROUNDED_BOX -> new BoxEnclosure(CORNER_MARGINS);
      case CAPTION_BOX, ELECTRONIC, NONE -> new BoxEnclosure(0);
    };
  }

  private Contour contour() {
    return switch (this) {
      case ELLIPSE -> new Contour.Round();
      case ROUNDED_BOX -> new Contour.Plain(CORNER_MARGINS);
      case CAPTION_BOX, NONE -> new Contour.Plain(0);
      case BURST -> new Burst();
      case CLOUD -> new Cloud();
      case WAVY -> new Wavy();
      case ELECTRONIC -> new Jagged();
    };
  }

  /** The greatest distance of the drawn outline from the inner area. */
  public double reachPx(double capitalPx) {
    return contour().reachCapitals() * capitalPx;
  }

  /**
   * The drawn outline round an inner area centred on the origin; nothing for {@link #NONE}.
   *
   * @param enclosed size of the inner area; its shift is left to the caller
   */
  public Path outline(Enclosed enclosed, OutlineStyle style) {
    return this == NONE
        ? new Path(List.of())
        : contour().around(enclosed.halfWidthPx(), enclosed.halfHeightPx(), style);
  }

  /** Returns true if its inner area is a superellipse; else it is a box. */
  public boolean isRound() {
    return this == ELLIPSE || this == BURST || this == CLOUD || this == WAVY;
  }

  /** Returns true if it points at a speaker. */
  public boolean hasTail() {
    return this != CAPTION_BOX && this != NONE;
  }

  /** The word in files and reports, e.g. {@code rounded-box}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The shape of that word, if there is one. */
  public static Optional<ShapeKind> of(String word) {
    return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
  }
}
