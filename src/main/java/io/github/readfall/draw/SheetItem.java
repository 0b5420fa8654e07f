package io.github.readfall.draw;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.strip.galley.Chain;
import io.github.readfall.type.balloon.InnerArea;
import io.github.readfall.type.balloon.JoinedOutline;
import io.github.readfall.type.balloon.ShapeKind;
import io.github.readfall.type.balloon.Tail;
import io.github.readfall.type.balloon.TailRoot;
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
  private static final double TAIL_DROP = 1.5;

  private static final double THOUGHT_DROP = 2.4;
  private static final double TAIL_LEAN = 0.72;

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
        tail.map(t -> t.movedBy(-box.x(), -box.y())),
        box.movedBy(-box.x(), -box.y()));
  }

  private static Optional<Tail> tail(SetBalloon balloon, XY place, double side) {
    if (!balloon.look().shape().hasTail()) {
      return Optional.empty();
    }
    double unit = balloon.outlineStyle().capitalPx();
    InnerArea inner = balloon.innerAt(place);
    XY centre = inner.box().centre();
    double across = side * (inner.box().width() * TAIL_ASIDE + unit * TAIL_LEAN);
    double drop = unit * (BalloonArtist.isThought(balloon) ? THOUGHT_DROP : TAIL_DROP);
    XY tip = new XY(centre.x() + across, place.y() + balloon.box().height() + drop);
    Path outline = balloon.outline().movedBy(place.x(), place.y());
    return Optional.of(TailRoot.tail(inner, outline, tip));
  }

  /** The item's marks, moved to a place on the sheet. */
  List<Mark> draw(XY at) {
    if (balloons.size() == 1) {
      SetBalloon only = balloons.get(0);
      XY place = places.get(0);
      List<Tail> own = tail.map(t -> t.movedBy(-place.x(), -place.y())).stream().toList();
      return List.of(BalloonArtist.draw(only, at.plus(place.x(), place.y()), own));
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

  /** All outlines, the necks between them, and the tail, as one. */
  private Path joined() {
    List<Path> outlines = new ArrayList<>();
    List<Path> arms = new ArrayList<>();
    tail.filter(t -> t.shape() != ShapeKind.CLOUD).map(Tail::outline).ifPresent(arms::add);
    for (int i = 0; i < balloons.size(); i++) {
      outlines.add(balloons.get(i).outline().movedBy(places.get(i).x(), places.get(i).y()));
      if (i > 0) {
        arms.add(neck(i));
      }
    }
    return JoinedOutline.of(outlines, arms, BalloonArtist.corner(balloons.get(0)));
  }

  private Path neck(int below) {
    int above = below - 1;
    return Chain.neck(
            balloons.get(above), places.get(above), balloons.get(below), places.get(below))
        .outline();
  }
}
