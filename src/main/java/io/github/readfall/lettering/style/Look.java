package io.github.readfall.lettering.style;

import io.github.readfall.base.viewing.Colour;
import io.github.readfall.type.balloon.ShapeKind;
import java.util.Optional;

/**
 * The look of one cue: voice and manners together, with nothing left open but the face.
 *
 * @param face family or file of the face; empty for the default dialogue face, or the default
 *     effects face for a sound effect
 * @param weight of the face, 1 to 1000, 400 being regular (OpenType, usWeightClass)
 * @param italic true to use the face's italic
 * @param slantDeg slant of upright letters, in degrees, rightward positive; -45 to 45
 * @param size factor on the size of {@link Lettering}; positive
 * @param capitals true to set everything in capitals; empty to leave it to the face
 * @param fill of the balloon
 * @param text of the letters
 * @param line round the balloon
 * @param shape of the balloon
 * @param lineStyle of the line round the balloon
 * @param tracking letterspacing after every letter, in em, on top of that of {@link Lettering}
 */
public record Look(
    Optional<String> face,
    int weight,
    boolean italic,
    double slantDeg,
    double size,
    Optional<Boolean> capitals,
    Colour fill,
    Colour text,
    Colour line,
    ShapeKind shape,
    LineStyle lineStyle,
    double tracking) {

  /** Plain speech: near-black on white in an ellipse. Colours: house defaults, no source. */
  public static final Look SPEECH =
      new Look(
          Optional.empty(),
          400,
          false,
          0,
          1,
          Optional.empty(),
          Colour.WHITE,
          new Colour(0x111111),
          new Colour(0x111111),
          ShapeKind.ELLIPSE,
          LineStyle.SOLID,
          0);

  public Look {
    if (weight < 1 || weight > 1000 || !(size > 0) || !(StrictMath.abs(slantDeg) <= 45)) {
      throw new IllegalArgumentException(
          "no look: weight " + weight + ", size " + size + ", slant " + slantDeg);
    }
  }

  /** The same look in another balloon. */
  public Look withShape(ShapeKind other) {
    return new Look(
        face, weight, italic, slantDeg, size, capitals, fill, text, line, other, lineStyle,
        tracking);
  }
}
