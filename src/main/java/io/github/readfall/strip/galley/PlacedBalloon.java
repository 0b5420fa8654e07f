package io.github.readfall.strip.galley;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.Region;
import io.github.readfall.base.geom.XY;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.script.Cue;
import io.github.readfall.script.CueKind;
import io.github.readfall.script.Manner;
import io.github.readfall.type.balloon.ShapeKind;
import io.github.readfall.type.balloon.Tail;
import java.util.List;
import java.util.Optional;

/**
 * A set balloon in its place on the strip.
 *
 * @param set its text and outline, at its own origin
 * @param at the top left corner of its box
 * @param tails in strip coordinates, one towards each speaker; mostly one, or none
 * @param pinned true if the person placed it
 * @param bleed true if it is meant to run off its panel or the strip
 * @param body area of its outline on the strip, without the tail; the box of the ink if it has no
 *     outline
 * @param tailBodies areas of its tails on the strip, with the parts inside the outline
 */
public record PlacedBalloon(
    SetBalloon set,
    XY at,
    List<Tail> tails,
    boolean pinned,
    boolean bleed,
    Region body,
    List<Region> tailBodies) {

  public PlacedBalloon {
    tails = List.copyOf(tails);
    tailBodies = List.copyOf(tailBodies);
  }

  /** A balloon at a place. */
  public static PlacedBalloon of(
      SetBalloon set, XY at, List<Tail> tails, boolean pinned, boolean bleed) {
    boolean lined = set.look().shape() != ShapeKind.NONE;
    Region body =
        lined
            ? Region.of(set.outline().movedBy(at.x(), at.y()))
            : Region.of(set.box().movedBy(at.x(), at.y()));
    return new PlacedBalloon(set, at, tails, pinned, bleed, body, bodies(tails));
  }

  private static List<Region> bodies(List<Tail> tails) {
    return tails.stream().map(tail -> Region.of(tail.outline())).toList();
  }

  /**
   * The same balloon moved, with other tails.
   *
   * @param to the new top left corner of its box
   */
  public PlacedBalloon at(XY to, List<Tail> newTails) {
    Region moved = body.movedBy(to.x() - at.x(), to.y() - at.y());
    return new PlacedBalloon(set, to, newTails, pinned, bleed, moved, bodies(newTails));
  }

  /** The first of its tails. */
  public Optional<Tail> tail() {
    return tails.stream().findFirst();
  }

  /** The area of all its tails. */
  public Optional<Region> tailBody() {
    return tailBodies.stream().reduce(Region::union);
  }

  public Cue cue() {
    return set.cue();
  }

  public String id() {
    return cue().id();
  }

  /** Its panel's place in the script, from 1. */
  public int panel() {
    return cue().panel();
  }

  /** Bounds of the outline on the strip, without the tail. */
  public Box box() {
    return set.box().movedBy(at.x(), at.y());
  }

  /** Bounds of the outline and its tail on the strip. */
  public Box reach() {
    return tailBody().map(t -> box().union(t.bounds())).orElse(box());
  }

  public boolean isCaption() {
    return cue().kind() == CueKind.CAPTION;
  }

  /** Returns true for a sound effect without an outline, which may cross borders. */
  public boolean isUnboxedEffect() {
    return set.look().shape() == ShapeKind.NONE;
  }

  /** Returns true if it may be before its panel: captions, and voices from off the picture. */
  public boolean mayLeadIn() {
    return isCaption() || cue().has(Manner.OFF) || cue().has(Manner.VOICE_OVER);
  }

  /** Returns true if the two are parts of one connected balloon. */
  public boolean isJoinedWith(PlacedBalloon other) {
    return set.joinedTo().filter(other.id()::equals).isPresent()
        || other.set.joinedTo().filter(id()::equals).isPresent();
  }
}
