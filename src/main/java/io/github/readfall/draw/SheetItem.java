package io.github.readfall.draw;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.strip.galley.Chain;
import io.github.readfall.type.balloon.ShapeKind;
import io.github.readfall.type.balloon.Tail;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A balloon on a sheet, with the balloons joined to it below, their places from the item's own top
 * left corner, and the tail they share.
 *
 * @param balloons from top to bottom
 * @param places of their boxes' top left corners
 * @param tail of the last one, in the item's coordinates; empty if it has no speaker
 * @param box bounds of all of it
 */
record SheetItem(List<SetBalloon> balloons, List<XY> places, Optional<Tail> tail, Box box) {

  /** In capitals. House defaults, no source. */
  private static final double TAIL_FOOT = 0.92;

  private static final double TAIL_DROP = 1.12;
  private static final double TAIL_LEAN = 0.72;
  private static final double TAIL_ROOT = 0.2;

  /** In widths of the balloon. House default, no source. */
  private static final double TAIL_ASIDE = 0.14;

  SheetItem {
    balloons = List.copyOf(balloons);
    places = List.copyOf(places);
  }

  /**
   * Stacks joined balloons, each a little to the side of the one above.
   *
   * @param tailLeft whether the speaker is to the left
   */
  static SheetItem of(List<SetBalloon> balloons, boolean tailLeft) {
    List<XY> places = Chain.places(balloons, !tailLeft);
    double side = tailLeft ? -1 : 1;
    Box box = balloons.get(0).box().movedBy(places.get(0).x(), places.get(0).y());
    for (int i = 1; i < balloons.size(); i++) {
      box = box.union(balloons.get(i).box().movedBy(places.get(i).x(), places.get(i).y()));
    }
    SetBalloon last = balloons.get(balloons.size() - 1);
    Optional<Tail> tail = tail(last, places.get(places.size() - 1), side);
    Box whole = tail.map(t -> t.outline().bounds()).map(box::union).orElse(box);
    return atOrigin(balloons, places, tail, whole);
  }

  private static SheetItem atOrigin(
      List<SetBalloon> balloons, List<XY> places, Optional<Tail> tail, Box box) {
    return new SheetItem(
        balloons,
        places.stream().map(place -> place.plus(-box.x(), -box.y())).toList(),
        tail.map(
            t ->
                new Tail(
                    t.root().plus(-box.x(), -box.y()),
                    t.tip().plus(-box.x(), -box.y()),
                    t.footPx(),
                    t.bend())),
        box.movedBy(-box.x(), -box.y()));
  }

  private static Optional<Tail> tail(SetBalloon balloon, XY place, double side) {
    if (!balloon.look().shape().hasTail()) {
      return Optional.empty();
    }
    Box inner = balloon.inner().movedBy(place.x(), place.y());
    double unit = balloon.outlineStyle().capitalPx();
    double bottom = place.y() + balloon.box().height();
    double across = side * inner.width() * TAIL_ASIDE;
    ShapeKind shape = balloon.look().shape();
    double depth = shape.enclosure().depthPx(inner.width() / 2, inner.height() / 2, across);
    boolean thought = shape == ShapeKind.CLOUD;
    XY centre = inner.centre();
    XY root = centre.plus(across, thought ? bottom - centre.y() : depth - TAIL_ROOT * unit);
    XY tip = new XY(root.x() + side * unit * TAIL_LEAN, bottom + TAIL_DROP * unit);
    return Optional.of(new Tail(root, tip, TAIL_FOOT * unit, -side * 0.13));
  }

  /** The item's marks, moved to a place on the sheet. */
  List<Mark> draw(XY at) {
    if (balloons.size() == 1) {
      SetBalloon only = balloons.get(0);
      XY place = places.get(0);
      Optional<Tail> own = tail.map(t -> movedBack(t, place));
      return List.of(
          BalloonArtist.draw(only, at.plus(place.x(), place.y()), own.stream().toList()));
    }
    List<Mark> marks =
        new ArrayList<>(BalloonArtist.lined(joined().movedBy(at.x(), at.y()), balloons.get(0)));
    for (int i = 0; i < balloons.size(); i++) {
      SetBalloon balloon = balloons.get(i);
      XY place = at.plus(places.get(i).x(), places.get(i).y());
      marks.add(
          new Mark.Group(
              balloon.cue().id(),
              BalloonArtist.text(balloon),
              BalloonArtist.letters(balloon, place)));
    }
    return marks;
  }

  private static Tail movedBack(Tail tail, XY place) {
    return new Tail(
        tail.root().plus(-place.x(), -place.y()),
        tail.tip().plus(-place.x(), -place.y()),
        tail.footPx(),
        tail.bend());
  }

  /** All outlines, the necks between them, and the tail, as one. */
  private Path joined() {
    Path all = tail.map(Tail::outline).orElse(new Path(List.of()));
    for (int i = 0; i < balloons.size(); i++) {
      all = all.joinedWith(balloons.get(i).outline().movedBy(places.get(i).x(), places.get(i).y()));
      if (i > 0) {
        all = all.joinedWith(neck(i));
      }
    }
    return all;
  }

  private Path neck(int below) {
    int above = below - 1;
    return Chain.neck(
            balloons.get(above), places.get(above), balloons.get(below), places.get(below))
        .outline();
  }
}
