package io.github.readfall.export;

import java.util.Locale;

/** The kinds of export. */
public enum Kind {
  /** The lettering alone, to lay over art: transparent canvas pages, and SVG with its layers. */
  LAYERS,
  /** The finished strip cut for delivery. */
  SLICES,
  /** For an editor, on paper or screen: PDF. */
  PROOF,
  /** For a phone: one HTML file with every language. */
  PHONE,
  /** The words and pictures, as plain text and HTML. */
  TRANSCRIPT,
  /** The whole strip as one SVG. */
  SVG,
  /** The whole strip as one PNG. */
  PNG;

  /** Returns true if it is made in every language there is, unless some are asked for. */
  public boolean isForAllLanguages() {
    return this == PHONE || this == TRANSCRIPT;
  }

  /** The word on a command line. */
  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }
}
