package io.github.readfall.base.viewing;

import java.util.Locale;
import java.util.Optional;

/**
 * An opaque sRGB colour.
 *
 * @param rgb {@code 0xRRGGBB}
 */
public record Colour(int rgb) {

  public static final Colour WHITE = new Colour(0xffffff);

  public Colour {
    if ((rgb & ~0xffffff) != 0) {
      throw new IllegalArgumentException("not a colour: " + rgb);
    }
  }

  /** Reads {@code #rrggbb} or {@code #rgb}; empty where it is neither. */
  public static Optional<Colour> parse(String text) {
    if (text.matches("#[0-9a-fA-F]{6}")) {
      return Optional.of(new Colour(Integer.parseInt(text.substring(1), 16)));
    }
    if (text.matches("#[0-9a-fA-F]{3}")) {
      return parse(text.replaceAll("([0-9a-fA-F])", "$1$1"));
    }
    return Optional.empty();
  }

  /** {@code #rrggbb}. */
  public String hex() {
    return String.format(Locale.ROOT, "#%06x", rgb);
  }

  /** Relative luminance, 0 black to 1 white (WCAG 2.2, "relative luminance"). */
  public double luminance() {
    return 0.2126 * linear(rgb >> 16 & 0xff)
        + 0.7152 * linear(rgb >> 8 & 0xff)
        + 0.0722 * linear(rgb & 0xff);
  }

  private static double linear(int channel) {
    double c = channel / 255.0;
    return c <= 0.04045 ? c / 12.92 : StrictMath.pow((c + 0.055) / 1.055, 2.4);
  }

  /** Contrast ratio, 1 to 21, never rounded (WCAG 2.2, "contrast ratio"). */
  public double contrastWith(Colour other) {
    double a = luminance();
    double b = other.luminance();
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }
}
