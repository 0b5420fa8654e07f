package io.github.readfall.strip;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.type.balloon.ShapeKind;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A balloon in layout.json. What is left out is computed.
 *
 * @param id of its cue when it was written, e.g. {@code p1-1}; only breaks ties; may be empty if
 *     the file gives a cue
 * @param cue its cue; empty if the file gives only an id
 * @param shape of its outline; empty to leave it to the voice
 * @param box of its outline without the tail, in strip pixels
 * @param fontPx em of existing lettering, in strip pixels; positive
 * @param capitalPx the same by the measured height of a capital, in strip pixels; positive
 * @param tailTo the tip of its tail, in strip pixels
 * @param pinned true if the person placed it, so that nothing else moves it
 * @param bleed true if it is meant to run off its panel or the strip
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

  /** Returns true if its lettering exists already: then it is judged, not chosen. */
  public boolean isLettered() {
    return fontPx.isPresent() || capitalPx.isPresent();
  }

  /** The same balloon for another cue. */
  public LaidBalloon of(String newId, CueMark mark) {
    return new LaidBalloon(
        newId, Optional.of(mark), shape, box, fontPx, capitalPx, tailTo, pinned, bleed, extra);
  }

  /** The same balloon with another tip of its tail. */
  public LaidBalloon withTip(Optional<XY> tip) {
    return at(box, tip);
  }

  /** The same balloon with another outline; empty to leave it to its voice. */
  public LaidBalloon shaped(Optional<ShapeKind> other) {
    return new LaidBalloon(id, cue, other, box, fontPx, capitalPx, tailTo, pinned, bleed, extra);
  }

  /** The same balloon, pinned or not. */
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
