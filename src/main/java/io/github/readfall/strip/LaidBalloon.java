package io.github.readfall.strip;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.type.balloon.ShapeKind;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What layout.json says of a balloon: what is left out is worked out.
 *
 * @param id of its cue when it was written, e.g. {@code p1-1}; breaks ties alone; may be empty
 *     where the file gives a cue
 * @param cue what it says; empty where the file gives only an id
 * @param shape of its outline; empty where the voice decides
 * @param box of its outline without the tail, in strip pixels
 * @param fontPx em of lettering that exists, in strip pixels; positive
 * @param capitalPx the same by the measured height of a capital, in strip pixels; positive
 * @param tailTo the tip of its tail, in strip pixels
 * @param pinned whether the person placed it, so that nothing else moves it
 * @param bleed whether it is meant to run off its panel or the strip
 * @param extra keys that this version does not know
 */
public record LaidBalloon(
    String id,
    Optional<CueMark> cue,
    Optional<ShapeKind> shape,
    Optional<Box> box,
    OptionalDouble fontPx,
    OptionalDouble capitalPx,
    Optional<XY> tailTo,
    boolean pinned,
    boolean bleed,
    Extra extra) {

  /** Whether its lettering exists already: then it is judged, not chosen. */
  public boolean isLettered() {
    return fontPx.isPresent() || capitalPx.isPresent();
  }

  /** The same balloon known by another cue. */
  public LaidBalloon of(String newId, CueMark mark) {
    return new LaidBalloon(
        newId, Optional.of(mark), shape, box, fontPx, capitalPx, tailTo, pinned, bleed, extra);
  }

  /** The same balloon with its tail ending elsewhere. */
  public LaidBalloon withTip(Optional<XY> tip) {
    return at(box, tip);
  }

  /** The same balloon with another outline; empty where its voice decides. */
  public LaidBalloon shaped(Optional<ShapeKind> other) {
    return new LaidBalloon(id, cue, other, box, fontPx, capitalPx, tailTo, pinned, bleed, extra);
  }

  /** The same balloon, placed by the person or left to be placed. */
  public LaidBalloon pinned(boolean isPinned) {
    return new LaidBalloon(id, cue, shape, box, fontPx, capitalPx, tailTo, isPinned, bleed, extra);
  }

  /** The same balloon with another id. */
  public LaidBalloon named(String newId) {
    return new LaidBalloon(newId, cue, shape, box, fontPx, capitalPx, tailTo, pinned, bleed, extra);
  }

  /** The same balloon at another place. */
  public LaidBalloon at(Optional<Box> newBox, Optional<XY> newTailTo) {
    return new LaidBalloon(
        id, cue, shape, newBox, fontPx, capitalPx, newTailTo, pinned, bleed, extra);
  }
}
