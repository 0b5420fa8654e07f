package io.github.readfall.lettering.typeset;

import io.github.readfall.base.geom.Box;
import io.github.readfall.type.balloon.ShapeKind;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * The requests of a layout to one balloon, beyond its voice and manner. What is left out is chosen.
 *
 * @param shape of its outline
 * @param box bounds of its outline without the tail, in strip pixels: only its size matters. A
 *     balloon without an outline takes the size of its ink all the same
 * @param fontPx em of existing lettering, in strip pixels; positive
 * @param capitalPx the same by the measured height of a capital, or of an ideograph in a script
 *     that has those, in strip pixels; positive; {@code fontPx} takes precedence
 * @param lines number of lines; if its text has no setting of so many, all is chosen
 * @param tightening how much tighter than usual it is lettered
 */
public record BalloonRequest(
    Optional<ShapeKind> shape,
    Optional<Box> box,
    OptionalDouble fontPx,
    OptionalDouble capitalPx,
    OptionalInt lines,
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
    this(shape, box, fontPx, capitalPx, OptionalInt.empty(), Tightening.NONE);
  }

  /** Returns true if the lettering exists: then its size is judged, not chosen. */
  public boolean isLettered() {
    return fontPx.isPresent() || capitalPx.isPresent();
  }

  /** The same request with another box. */
  public BalloonRequest in(Box other) {
    return new BalloonRequest(shape, Optional.of(other), fontPx, capitalPx, lines, tightening);
  }

  /** The same in a box of its own size. */
  public BalloonRequest withoutBox() {
    return new BalloonRequest(shape, Optional.empty(), fontPx, capitalPx, lines, tightening);
  }

  /** The same request with another tightening. */
  public BalloonRequest tightened(Tightening other) {
    return new BalloonRequest(shape, box, fontPx, capitalPx, lines, other);
  }

  /** The same request for a number of lines; empty to have it chosen. */
  public BalloonRequest inLines(OptionalInt number) {
    return new BalloonRequest(shape, box, fontPx, capitalPx, number, tightening);
  }
}
