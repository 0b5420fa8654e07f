package io.github.readfall.balloon;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The outlines a balloon can have. */
public enum ShapeKind {
  /** Speech. */
  ELLIPSE,
  ROUNDED_BOX,
  /** Narration: square corners, no tail. */
  CAPTION_BOX,
  /** Shouting: spikes round an ellipse. */
  BURST,
  /** Thought: bumps round an ellipse. */
  CLOUD,
  /** A faint or eerie voice. */
  WAVY,
  /** A voice through a machine: a box with jagged edges. */
  ELECTRONIC,
  /** No outline: sound effects. */
  NONE;

  /** The word in files and reports, e.g. {@code rounded-box}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The shape of that word, if there is one. */
  public static Optional<ShapeKind> of(String word) {
    return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
  }
}
