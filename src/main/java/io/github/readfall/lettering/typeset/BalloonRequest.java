package io.github.readfall.lettering.typeset;

import io.github.readfall.base.geom.Box;
import io.github.readfall.type.balloon.ShapeKind;
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
public record BalloonRequest(
    Optional<ShapeKind> shape,
    Optional<Box> box,
    OptionalDouble fontPx,
    OptionalDouble capitalPx,
    Tightening tightening) {

  /** Nothing: all is chosen. */
  public static final BalloonRequest NOTHING =
      new BalloonRequest(
          Optional.empty(), Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty());

  /** Lettered as usual. */
  public BalloonRequest(
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
  public BalloonRequest in(Box other) {
    return new BalloonRequest(shape, Optional.of(other), fontPx, capitalPx, tightening);
  }

  /** The same in a box of its own size. */
  public BalloonRequest withoutBox() {
    return new BalloonRequest(shape, Optional.empty(), fontPx, capitalPx, tightening);
  }

  /** The same but for how tight it is lettered. */
  public BalloonRequest tightened(Tightening other) {
    return new BalloonRequest(shape, box, fontPx, capitalPx, other);
  }
}
