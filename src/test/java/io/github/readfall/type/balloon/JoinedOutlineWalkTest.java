package io.github.readfall.type.balloon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.Endurance;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.Flattened;
import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.Region;
import io.github.readfall.base.geom.XY;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.valid.IsSimpleOp;

/** Random walks over single and joined balloons, their tails and their thoughts, as drawn. */
class JoinedOutlineWalkTest {

  private static final List<ShapeKind> SHAPES =
      List.of(
          ShapeKind.ELLIPSE,
          ShapeKind.ROUNDED_BOX,
          ShapeKind.BURST,
          ShapeKind.CLOUD,
          ShapeKind.WAVY,
          ShapeKind.ELECTRONIC);

  private static final int ROUNDS = Endurance.rounds(120, 20_000);

  /**
   * The most that an outline may turn inwards within a tenth of a capital: a square corner is 90.
   */
  private static final double SHARPEST_DEG = 60;

  /** The end of a slit narrower than this turns back within less, in capitals. */
  private static final double SLIT = 0.4;

  /** Returns true if it has corners of its own wherever a neck or a tail may be. */
  private static boolean isSpiky(ShapeKind shape) {
    return shape == ShapeKind.BURST || shape == ShapeKind.ELECTRONIC || shape == ShapeKind.CLOUD;
  }

  /** A balloon at a place. */
  private record Balloon(ShapeKind shape, double a, double b, XY middle, OutlineStyle style) {

    static Balloon random(SplittableRandom random, ShapeKind shape, double capital, XY middle) {
      double b = random.nextDouble(1.25, 6) * capital;
      double a = b * random.nextDouble(1, 2.6);
      OutlineStyle style =
          new OutlineStyle(0.75 * capital, capital, random.nextDouble(2, 4), random.nextLong());
      return new Balloon(shape, a, b, middle, style);
    }

    Balloon at(XY there) {
      return new Balloon(shape, a, b, there, style);
    }

    Path outline() {
      Path drawn = shape.outline(new Enclosed(a, b, 0, 0), style);
      return drawn.movedBy(middle.x(), middle.y());
    }

    InnerArea inner() {
      return new InnerArea(shape, new Box(middle.x() - a, middle.y() - b, 2 * a, 2 * b), style);
    }

    Tail tail(XY tip) {
      return TailRoot.tail(inner(), outline(), tip);
    }

    /** A place so far from its drawn outline, in any direction. */
    XY around(double direction, double apartPx) {
      XY towards = middle.plus(1e4 * Math.cos(direction), 1e4 * Math.sin(direction));
      double edge = Crossing.last(outline(), middle, towards) * 1e4;
      return middle.towards(towards, (edge + apartPx) / 1e4);
    }
  }

  /** What is joined, and what is drawn. */
  private record Drawing(List<Path> balloons, List<Path> arms, double capitalPx, Path joined) {

    static Drawing of(List<Balloon> balloons, List<Path> arms) {
      List<Path> outlines = balloons.stream().map(Balloon::outline).toList();
      Balloon first = balloons.get(0);
      double cornerPx = JoinedOutline.cornerPx(first.shape, first.style);
      Path joined = JoinedOutline.of(outlines, arms, cornerPx);
      assertEquals(joined, JoinedOutline.of(outlines, arms, cornerPx));
      return new Drawing(outlines, arms, first.style.capitalPx(), joined);
    }

    void check(String what) {
      assertEquals(1, joined.steps().stream().filter(Path.Move.class::isInstance).count(), what);
      assertSimple(joined, what);
      Region drawn = Region.of(joined);
      Region parts = Region.of(balloons.get(0));
      for (Path part : balloons.subList(1, balloons.size())) {
        parts = parts.union(Region.of(part));
      }
      for (Path arm : arms) {
        parts = parts.union(Region.of(arm));
      }
      double lost = parts.minus(drawn).areaPx2();
      assertTrue(lost < 0.03 * capitalPx * capitalPx, () -> what + " loses " + lost + " px2");
    }

    /** The greatest inward turn within a short way, away from corners that belong to the parts. */
    double sharpestDeg() {
      List<XY> own = new ArrayList<>();
      balloons.forEach(path -> path.ends().forEach(own::add));
      arms.forEach(path -> path.ends().forEach(own::add));
      List<XY> points = evenly(joined, 0.01 * capitalPx);
      int n = points.size();
      int window = 10; // a tenth of a capital
      double side = Math.signum(signedArea(points));
      double most = 0;
      for (int i = 0; i < n; i++) {
        double turn = 0;
        for (int j = 1; j < window; j++) {
          turn -=
              side
                  * turn(
                      points.get((i + j - 1) % n),
                      points.get((i + j) % n),
                      points.get((i + j + 1) % n));
        }
        XY middle = points.get((i + window / 2) % n);
        double near = 0.08 * capitalPx;
        if (turn > most && own.stream().noneMatch(at -> at.distanceTo(middle) < near)) {
          most = turn;
        }
      }
      return Math.toDegrees(most);
    }
  }

  private static double turn(XY a, XY b, XY c) {
    double ux = b.x() - a.x();
    double uy = b.y() - a.y();
    double vx = c.x() - b.x();
    double vy = c.y() - b.y();
    return Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
  }

  private static double signedArea(List<XY> points) {
    double twice = 0;
    for (int i = 0; i < points.size(); i++) {
      XY a = points.get(i);
      XY b = points.get((i + 1) % points.size());
      twice += a.x() * b.y() - b.x() * a.y();
    }
    return twice / 2;
  }

  /** Points at even distances along an outline. */
  private static List<XY> evenly(Path path, double apartPx) {
    List<XY> dense = new ArrayList<>();
    XY pen = new XY(0, 0);
    XY start = pen;
    for (Path.Step step : path.steps()) {
      if (step instanceof Path.Curve curve) {
        for (int i = 1; i <= 60; i++) {
          dense.add(curve.at(pen, i / 60.0));
        }
        pen = curve.to();
      } else {
        XY to = step instanceof Path.Line line ? line.to() : start;
        to = step instanceof Path.Move move ? move.to() : to;
        start = step instanceof Path.Move ? to : start;
        dense.add(to);
        pen = to;
      }
    }
    List<XY> even = new ArrayList<>(List.of(dense.get(0)));
    double left = apartPx;
    for (int i = 1; i < dense.size(); i++) {
      XY from = dense.get(i - 1);
      double length = from.distanceTo(dense.get(i));
      for (double at = left; at <= length; at += apartPx) {
        even.add(from.towards(dense.get(i), at / length));
        left += apartPx;
      }
      left -= length;
    }
    return even;
  }

  private static void assertSimple(Path path, String what) {
    List<XY> points = Flattened.evenly(path, 16);
    List<Coordinate> ring = new ArrayList<>();
    for (XY at : points) {
      Coordinate next = new Coordinate(at.x(), at.y());
      if (ring.isEmpty() || ring.get(ring.size() - 1).distance(next) > 1e-6) {
        ring.add(next);
      }
    }
    if (ring.get(0).distance(ring.get(ring.size() - 1)) < 1e-6) {
      ring.remove(ring.size() - 1);
    }
    ring.add(ring.get(0));
    IsSimpleOp simple =
        new IsSimpleOp(new GeometryFactory().createLinearRing(ring.toArray(new Coordinate[0])));
    assertTrue(
        simple.isSimple(), () -> what + " crosses itself at " + simple.getNonSimpleLocation());
  }

  @Test
  void tailsReachTheirTipsAndLeaveTheOutlineInCurves() {
    for (int seed = 0; seed < ROUNDS; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      double capital = random.nextDouble(20, 60);
      ShapeKind shape = SHAPES.get(random.nextInt(SHAPES.size()));
      Balloon balloon = Balloon.random(random, shape, capital, new XY(0, 0));
      double out = random.nextDouble(1, 9) * capital;
      XY tip = balloon.around(random.nextDouble(0, 2 * Math.PI), out);
      if (shape != ShapeKind.CLOUD) {
        String what = "seed " + seed + " " + shape;
        Drawing drawing = Drawing.of(List.of(balloon), List.of(balloon.tail(tip).outline()));
        drawing.check(what);
        double off =
            evenly(drawing.joined, 0.2).stream().mapToDouble(tip::distanceTo).min().orElseThrow();
        assertTrue(off < 0.5, () -> what + " ends " + off + " px from the tip");
        double sharp = drawing.sharpestDeg();
        assertTrue(isSpiky(shape) || sharp < SHARPEST_DEG, () -> what + " turns in by " + sharp);
      }
    }
  }

  @Test
  void necksJoinPairsInCurves() {
    for (int seed = 0; seed < ROUNDS; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      double capital = random.nextDouble(20, 60);
      ShapeKind shape = SHAPES.get(random.nextInt(SHAPES.size()));
      ShapeKind other = random.nextInt(3) == 0 ? SHAPES.get(random.nextInt(SHAPES.size())) : shape;
      Balloon one = Balloon.random(random, shape, capital, new XY(0, 0));
      Balloon two = Balloon.random(random, other, capital, new XY(0, 0));
      double direction = random.nextDouble(0, 2 * Math.PI);
      double gap = random.nextDouble(0.5, 4) * capital;
      XY edge = one.around(direction, gap);
      XY back = two.around(direction + Math.PI, 0);
      Balloon placed = two.at(edge.plus(-back.x(), -back.y()));
      Path neck = Neck.between(one.inner(), placed.inner()).outline();
      Drawing drawing = Drawing.of(List.of(one, placed), List.of(neck));
      String what = "seed " + seed + " " + shape + " " + other;
      drawing.check(what);
      double sharp = drawing.sharpestDeg();
      double apart = Region.of(one.outline()).distanceTo(Region.of(placed.outline()));
      boolean narrow = apart < SLIT * capital;
      boolean spiky = isSpiky(shape) || isSpiky(other);
      assertTrue(spiky || narrow || sharp < SHARPEST_DEG, () -> what + " turns in by " + sharp);
    }
  }

  @Test
  void thoughtsTrailSeparateShrinkingBubbles() {
    for (int seed = 0; seed < ROUNDS; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      double capital = random.nextDouble(20, 60);
      Balloon cloud = Balloon.random(random, ShapeKind.CLOUD, capital, new XY(0, 0));
      double out = random.nextDouble(1.5, 9) * capital;
      XY tip = cloud.around(random.nextDouble(0, 2 * Math.PI), out);
      List<Path> bubbles = cloud.tail(tip).bubbles();
      String what = "seed " + seed;
      assertTrue(bubbles.size() == 3 || bubbles.size() == 4, what);
      Region before = Region.of(cloud.outline());
      double area = Double.POSITIVE_INFINITY;
      for (Path path : bubbles) {
        Region bubble = Region.of(path);
        assertTrue(bubble.distanceTo(before) > 0, () -> what + " touches");
        assertTrue(bubble.areaPx2() < 0.7 * area, what);
        area = bubble.areaPx2();
        before = before.union(bubble);
      }
      Path last = bubbles.get(bubbles.size() - 1);
      double off = evenly(last, 0.2).stream().mapToDouble(tip::distanceTo).min().orElseThrow();
      assertTrue(off < 0.5, () -> what + " ends " + off + " px from the tip");
    }
  }
}
