package io.github.readfall.plan.place;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.script.CueKind;
import io.github.readfall.script.Manner;
import java.util.List;
import java.util.Optional;

/**
 * A unit of placement: a balloon, or joined ones with their places in the chain.
 *
 * @param balloons from top to bottom; not empty
 * @param offsets of their boxes from the item's top left corner
 * @param widthPx of all of them; positive
 * @param heightPx of all of them; positive
 * @param fixedAt its top left corner, if it may not move
 * @param fixedTips the tips of its tails, if they are given
 * @param goesOn true if another item is joined to it, which has the tail
 */
record PlacementItem(
    List<SetBalloon> balloons,
    List<XY> offsets,
    double widthPx,
    double heightPx,
    Optional<XY> fixedAt,
    List<XY> fixedTips,
    boolean goesOn) {

  PlacementItem {
    balloons = List.copyOf(balloons);
    offsets = List.copyOf(offsets);
    fixedTips = List.copyOf(fixedTips);
  }

  /** A balloon by itself. */
  static PlacementItem of(
      SetBalloon balloon, Optional<XY> fixedAt, List<XY> fixedTips, boolean goesOn) {
    return new PlacementItem(
        List.of(balloon),
        List.of(new XY(0, 0)),
        balloon.box().width(),
        balloon.box().height(),
        fixedAt,
        fixedTips,
        goesOn);
  }

  SetBalloon first() {
    return balloons.get(0);
  }

  /** The balloon that has the tail. */
  SetBalloon last() {
    return balloons.get(balloons.size() - 1);
  }

  int panel() {
    return first().cue().panel();
  }

  String speaker() {
    return first().cue().speaker();
  }

  /** All who say it together; mostly one. */
  List<String> speakers() {
    return first().cue().speakers();
  }

  /** Returns true if it continues another in a connected balloon. */
  boolean isJoinedTo(PlacementItem other) {
    Optional<String> before = first().joinedTo(); // asked for every two places that are tried
    return before.isPresent() && before.get().equals(other.last().cue().id());
  }

  boolean isSpoken() {
    return first().cue().kind() == CueKind.DIALOGUE;
  }

  boolean isCaption() {
    return first().cue().kind() == CueKind.CAPTION;
  }

  /** Returns true if its speaker is off the picture. */
  boolean isOff() {
    return first().cue().has(Manner.OFF);
  }

  boolean hasTail() {
    boolean wanted = !goesOn || !fixedTips.isEmpty();
    return wanted && isSpoken() && last().look().shape().hasTail();
  }

  Box boxAt(XY at) {
    return new Box(at.x(), at.y(), widthPx, heightPx);
  }

  /** A balloon's own top left corner. */
  XY place(int balloon, XY at) {
    return at.plus(offsets.get(balloon).x(), offsets.get(balloon).y());
  }

  /** The box of the balloon with the tail. */
  Box tailedBox(XY at) {
    XY place = place(balloons.size() - 1, at);
    return last().box().movedBy(place.x(), place.y());
  }
}
