package io.github.readfall.lettering.style;

import io.github.readfall.base.viewing.Colour;
import io.github.readfall.type.balloon.ShapeKind;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * The changes that a voice or a manner makes to the look of a cue; an empty one changes nothing.
 *
 * @param size a factor: a whisper of 0.85 in a voice of 1.2 is lettered at 1.02
 * @see Look for what the others mean
 */
public record LookChange(
    Optional<String> face,
    OptionalInt weight,
    Optional<Boolean> italic,
    OptionalDouble slantDeg,
    OptionalDouble size,
    Optional<Boolean> capitals,
    Optional<Colour> fill,
    Optional<Colour> text,
    Optional<Colour> line,
    Optional<ShapeKind> shape,
    Optional<LineStyle> lineStyle,
    OptionalDouble tracking) {

  /** Changes nothing. */
  public static final LookChange NONE =
      new LookChange(
          Optional.empty(),
          OptionalInt.empty(),
          Optional.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          OptionalDouble.empty());

  /** The same change, and to another face. */
  LookChange withFace(String other) {
    return new LookChange(
        Optional.of(other),
        weight,
        italic,
        slantDeg,
        size,
        capitals,
        fill,
        text,
        line,
        shape,
        lineStyle,
        tracking);
  }

  /** The look after this change. */
  public Look apply(Look look) {
    return new Look(
        face.or(look::face),
        weight.orElse(look.weight()),
        italic.orElse(look.italic()),
        slantDeg.orElse(look.slantDeg()),
        size.orElse(1) * look.size(),
        capitals.or(look::capitals),
        fill.orElse(look.fill()),
        text.orElse(look.text()),
        line.orElse(look.line()),
        shape.orElse(look.shape()),
        lineStyle.orElse(look.lineStyle()),
        tracking.orElse(look.tracking()));
  }
}
