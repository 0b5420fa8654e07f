package io.github.readfall.strip;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.type.balloon.ShapeKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

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
 * @param lines number of lines that the person chose; empty to have it chosen
 * @param tailsTo the tips of its tails, one for each speaker, mostly one; in strip pixels; empty to
 *     have them computed
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
    OptionalInt lines,
    List<XY> tailsTo,
    boolean pinned,
    boolean bleed,
    Extra extra) {

  /** A balloon of as many lines as look best. */
  public LaidBalloon(
      String id,
      Optional<CueMark> cue,
      Optional<ShapeKind> shape,
      Optional<Box> box,
      OptionalDouble fontPx,
      OptionalDouble capitalPx,
      List<XY> tailsTo,
      boolean pinned,
      boolean bleed,
      Extra extra) {
    this(
        id, cue, shape, box, fontPx, capitalPx, OptionalInt.empty(), tailsTo, pinned, bleed, extra);
  }

  public LaidBalloon {
    tailsTo = List.copyOf(tailsTo);
  }

  /** Returns true if its lettering exists already: then it is judged, not chosen. */
  public boolean isLettered() {
    return fontPx.isPresent() || capitalPx.isPresent();
  }

  /** The same balloon for another cue. */
  public LaidBalloon of(String newId, CueMark mark) {
    return new LaidBalloon(
        newId,
        Optional.of(mark),
        shape,
        box,
        fontPx,
        capitalPx,
        lines,
        tailsTo,
        pinned,
        bleed,
        extra);
  }

  /**
   * The same balloon with another tip of a tail.
   *
   * @param tail from 0; one that it does not have is added
   */
  public LaidBalloon withTip(int tail, XY tip) {
    List<XY> tips = new ArrayList<>(tailsTo);
    if (tail < tips.size()) {
      tips.set(tail, tip);
    } else {
      tips.add(tip);
    }
    return at(box, tips);
  }

  /** The same balloon with other tips of its tails. */
  public LaidBalloon withTips(List<XY> tips) {
    return at(box, tips);
  }

  /** The same balloon with another outline; empty to leave it to its voice. */
  public LaidBalloon shaped(Optional<ShapeKind> other) {
    return new LaidBalloon(
        id, cue, other, box, fontPx, capitalPx, lines, tailsTo, pinned, bleed, extra);
  }

  /** The same balloon in a number of lines; empty to have it chosen. */
  public LaidBalloon inLines(OptionalInt number) {
    return new LaidBalloon(
        id, cue, shape, box, fontPx, capitalPx, number, tailsTo, pinned, bleed, extra);
  }

  /** The same balloon, pinned or not. */
  public LaidBalloon pinned(boolean isPinned) {
    return new LaidBalloon(
        id, cue, shape, box, fontPx, capitalPx, lines, tailsTo, isPinned, bleed, extra);
  }

  /** The same balloon with another id. */
  public LaidBalloon named(String newId) {
    return new LaidBalloon(
        newId, cue, shape, box, fontPx, capitalPx, lines, tailsTo, pinned, bleed, extra);
  }

  /** The same balloon at another place, with the tips of its tails where they are. */
  public LaidBalloon at(Optional<Box> newBox) {
    return at(newBox, tailsTo);
  }

  /** The same balloon at another place, with other tips of its tails. */
  public LaidBalloon at(Optional<Box> newBox, List<XY> newTips) {
    return new LaidBalloon(
        id, cue, shape, newBox, fontPx, capitalPx, lines, newTips, pinned, bleed, extra);
  }

  /** The same balloon with its box and the tips of its tails moved. */
  public LaidBalloon movedBy(double dx, double dy) {
    return at(
        box.map(old -> old.movedBy(dx, dy)),
        tailsTo.stream().map(tip -> tip.plus(dx, dy)).toList());
  }
}
