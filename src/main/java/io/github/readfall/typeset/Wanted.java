package io.github.readfall.typeset;

import io.github.readfall.balloon.ShapeKind;
import io.github.readfall.geom.Box;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a layout asks of one balloon, beyond its voice and manner. What is left out is chosen.
 *
 * @param shape of its outline
 * @param box bounds of its outline, tail left out, in strip pixels: only its size is asked for. A
 *     balloon without an outline takes the size of its ink all the same
 * @param fontPx em of lettering that exists, in strip pixels; positive
 * @param capitalPx the same by the measured height of a capital, or of an ideograph in a script
 *     that has those, in strip pixels; positive; {@code fontPx} goes before it
 * @param tightening how much tighter than usual it is lettered
 */
public record Wanted(
    Optional<ShapeKind> shape,
    Optional<Box> box,
    OptionalDouble fontPx,
    OptionalDouble capitalPx,
    Tightening tightening) {

  /** Nothing: all is chosen. */
  public static final Wanted NOTHING =
      new Wanted(
          Optional.empty(), Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty());

  /** Lettered as usual. */
  public Wanted(
      Optional<ShapeKind> shape,
      Optional<Box> box,
      OptionalDouble fontPx,
      OptionalDouble capitalPx) {
    this(shape, box, fontPx, capitalPx, Tightening.NONE);
  }

  /** Whether the lettering exists: then its size is judged, not chosen. */
  public boolean isLettered() {
    return fontPx.isPresent() || capitalPx.isPresent();
  }

  /** The same but for the box. */
  public Wanted in(Box other) {
    return new Wanted(shape, Optional.of(other), fontPx, capitalPx, tightening);
  }

  /** The same in a box of its own size. */
  public Wanted withoutBox() {
    return new Wanted(shape, Optional.empty(), fontPx, capitalPx, tightening);
  }

  /** The same but for how tight it is lettered. */
  public Wanted tightened(Tightening other) {
    return new Wanted(shape, box, fontPx, capitalPx, other);
  }
}
