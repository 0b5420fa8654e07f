package io.github.readfall.draw;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.RegionIndex;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.plan.order.PathPoint;
import io.github.readfall.plan.order.ReadingOrder;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Draws the reading path from balloon to balloon. */
final class PathArtist {

  /** Radius of a number's disc, in units. */
  private static final double NUMBER = 1.15;

  /** The corner of an ellipse over that of its box: the sine of 45 degrees. */
  private static final double ROUND_CORNER = 0.7071;

  /** Steps by which a disc is moved out, as a share of its radius, and their greatest number. */
  private static final double STEP_OUT = 0.15;

  private static final int STEPS_OUT = 7;

  private final Pen pen;
  private final List<PathPoint> steps;
  private final List<XY> discs;

  private PathArtist(Pen pen, List<PathPoint> steps, List<XY> discs) {
    this.pen = pen;
    this.steps = List.copyOf(steps);
    this.discs = List.copyOf(discs);
  }

  static PathArtist of(Galley galley, Pen pen) {
    List<PathPoint> steps =
        ReadingOrder.of(galley).path().stream().filter(step -> !step.entersPanel()).toList();
    Map<String, PlacedBalloon> byId =
        galley.balloons().stream().collect(Collectors.toMap(PlacedBalloon::id, b -> b));
    RegionIndex<Box> letters =
        RegionIndex.of(
            galley.balloons().stream().flatMap(LetterBoxes::of).toList(), Function.identity());
    List<XY> discs =
        steps.stream()
            .map(
                step ->
                    Optional.ofNullable(byId.get(step.balloon()))
                        .map(balloon -> offLetters(balloon, letters, pen))
                        .orElse(step.at()))
            .toList();
    return new PathArtist(pen, steps, discs);
  }

  /** The whole path as one line, to be drawn behind the lettering. */
  List<Mark> way() {
    return List.of(way(steps.stream().map(PathPoint::at).toList()));
  }

  /** The way from each balloon to the next, so that a part of it can be drawn alone. */
  List<Mark> legs() {
    List<Mark> legs = new ArrayList<>();
    for (int i = 1; i < steps.size(); i++) {
      legs.add(way(List.of(steps.get(i - 1).at(), steps.get(i).at())));
    }
    return legs;
  }

  private Mark way(List<XY> points) {
    double dash = pen.unitPx() / 2;
    return new Mark.Line(Shapes.fall(points), Pen.PATH, pen.unitPx() / 4, List.of(dash, dash));
  }

  /** The place of each balloon in the order of reading, on the edge of its outline. */
  List<Mark> numbers() {
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < discs.size(); i++) {
      XY at = discs.get(i);
      marks.add(new Mark.Fill(Shapes.disc(at, NUMBER * pen.unitPx()), Pen.PATH));
      String number = Integer.toString(i + 1);
      XY foot = at.plus(0, 0.36 * pen.unitPx());
      marks.addAll(pen.small().centred(number, foot, true, Colour.WHITE));
    }
    return marks;
  }

  /** The boxes of the discs. */
  List<Box> numberBoxes() {
    return discs.stream().map(at -> disc(at, pen)).toList();
  }

  private static Box disc(XY at, Pen pen) {
    return new Box(at.x(), at.y(), 0, 0).grownBy(NUMBER * pen.unitPx());
  }

  /**
   * A place for a balloon's number that hides no letters, its own or others': on the upper left if
   * possible.
   */
  private static XY offLetters(PlacedBalloon balloon, RegionIndex<Box> letters, Pen pen) {
    double radiusPx = NUMBER * pen.unitPx();
    Box box = balloon.box();
    Predicate<XY> isClear = at -> !hides(at, radiusPx, letters);
    XY first = leadingEdge(balloon);
    return Stream.of(
            first,
            new XY(box.x(), box.centre().y()),
            new XY(first.x(), box.bottom() - (first.y() - box.y())),
            new XY(box.right() - (first.x() - box.x()), first.y()),
            new XY(box.right(), box.centre().y()))
        .map(at -> outwards(at, box.centre(), radiusPx, isClear))
        .filter(isClear)
        .findFirst()
        .orElse(first);
  }

  /** The place as far out as needed, and no further than a few radii. */
  private static XY outwards(XY from, XY middle, double radiusPx, Predicate<XY> isClear) {
    XY at = from;
    for (int i = 0; i < STEPS_OUT && !isClear.test(at); i++) {
      at = at.towards(middle, -STEP_OUT * radiusPx / Math.max(1, at.distanceTo(middle)));
    }
    return at;
  }

  private static boolean hides(XY at, double radiusPx, RegionIndex<Box> letters) {
    Box point = new Box(at.x(), at.y(), 0, 0);
    return letters.near(point.grownBy(radiusPx)).stream()
        .anyMatch(line -> line.distanceTo(point) < radiusPx);
  }

  /** The upper left of the outline. */
  private static XY leadingEdge(PlacedBalloon balloon) {
    Box box = balloon.box();
    if (balloon.isUnboxedEffect()) {
      return new XY(box.x() - box.height() / 4, box.centre().y());
    }
    double aside = balloon.set().look().shape().isRound() ? (1 - ROUND_CORNER) / 2 : 0;
    return new XY(box.x() + aside * box.width(), box.y() + aside * box.height());
  }
}
