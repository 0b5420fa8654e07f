package io.github.readfall.base.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PathTest {

  private static final int SEEDS = 300;

  @ParameterizedTest
  @ValueSource(doubles = {1, 100, 1e4})
  void boundsAreThoseOfTheDrawnCurveWhateverItsSteps(double sizePx) {
    for (int seed = 0; seed < SEEDS; seed++) {
      Path path = random(new SplittableRandom(seed), sizePx);
      assertBoundsAreTight(path, Flattened.evenly(path, 2000), sizePx * 1e-5);
    }
  }

  private static Path random(SplittableRandom random, double sizePx) {
    List<Path.Step> steps = new ArrayList<>();
    steps.add(new Path.Move(point(random, sizePx)));
    for (int i = random.nextInt(1, 5); i > 0; i--) {
      steps.add(
          random.nextInt(4) == 0
              ? new Path.Line(point(random, sizePx))
              : new Path.Curve(
                  point(random, sizePx), point(random, sizePx), point(random, sizePx)));
    }
    steps.add(new Path.Close());
    return new Path(steps);
  }

  private static XY point(SplittableRandom random, double sizePx) {
    return new XY(random.nextDouble(-sizePx, sizePx), random.nextDouble(-sizePx, sizePx));
  }

  private static void assertBoundsAreTight(Path path, List<XY> points, double tolerance) {
    Box box = path.bounds();
    assertEquals(points.stream().mapToDouble(XY::x).min().orElseThrow(), box.x(), tolerance);
    assertEquals(points.stream().mapToDouble(XY::y).min().orElseThrow(), box.y(), tolerance);
    assertEquals(points.stream().mapToDouble(XY::x).max().orElseThrow(), box.right(), tolerance);
    assertEquals(points.stream().mapToDouble(XY::y).max().orElseThrow(), box.bottom(), tolerance);
  }

  /**
   * The third derivative of a raised curve is 0 but for rounding, which a careless root of its
   * derivative would divide by.
   */
  @Test
  void boundsOfRaisedQuadraticCurvesAreThoseOfTheDrawnCurve() {
    for (int seed = 0; seed < SEEDS; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Path2D shape = new Path2D.Double();
      XY from = point(random, 9000);
      XY control = point(random, 9000);
      XY to = point(random, 9000);
      shape.moveTo(from.x(), from.y());
      shape.quadTo(control.x(), control.y(), to.x(), to.y());
      shape.closePath();
      Path path = Path.of(shape);
      assertBoundsAreTight(path, Flattened.evenly(path, 4000), 0.01);
    }
  }

  @Test
  void boundsOfACircleAreItsDiameter() {
    Box box = Path.of(new Ellipse2D.Double(-30, 20, 200, 120)).bounds();
    assertEquals(-30, box.x(), 1e-9);
    assertEquals(20, box.y(), 1e-9);
    assertEquals(200, box.width(), 1e-9);
    assertEquals(120, box.height(), 1e-9);
  }

  @Test
  void nothingHasEmptyBoundsAtTheOrigin() {
    assertEquals(new Box(0, 0, 0, 0), new Path(List.of()).bounds());
  }

  @Test
  void aPathComesBackFromJava2DAsItWas() {
    for (int seed = 0; seed < SEEDS; seed++) {
      Path path = random(new SplittableRandom(seed), 500);
      assertEquals(path, Path.of(path.toShape()));
    }
  }

  @Test
  void aRaisedQuadraticCurveIsTheSameCurve() {
    Path2D shape = new Path2D.Double();
    shape.moveTo(10, 20);
    shape.quadTo(100, -40, 60, 90);
    List<XY> points = Flattened.evenly(Path.of(shape), 10);
    for (int i = 1; i <= 10; i++) {
      double t = i / 10.0;
      double u = 1 - t;
      assertEquals(u * u * 10 + 2 * u * t * 100 + t * t * 60, points.get(i).x(), 1e-9);
      assertEquals(u * u * 20 + 2 * u * t * -40 + t * t * 90, points.get(i).y(), 1e-9);
    }
  }

  @Test
  void callersMayKeepTheShapeTheyGet() {
    Path path = Path.of(new Rectangle2D.Double(0, 0, 10, 10));
    Path2D shape = path.toShape();
    shape.reset();
    assertNotSame(shape, path.toShape());
    assertEquals(new Box(0, 0, 10, 10), path.bounds());
  }

  @Test
  void movingMovesEveryPoint() {
    for (int seed = 0; seed < 20; seed++) {
      Path path = random(new SplittableRandom(seed), 500);
      List<XY> moved = Flattened.evenly(path.movedBy(12.5, -7), 7);
      List<XY> points = Flattened.evenly(path, 7);
      assertEquals(points.size(), moved.size());
      for (int i = 0; i < points.size(); i++) {
        assertTrue(points.get(i).plus(12.5, -7).distanceTo(moved.get(i)) < 1e-9);
      }
    }
  }

  /** Two circles of radius r at a distance d share a lens, whose area is known. */
  @ParameterizedTest
  @ValueSource(doubles = {20, 60, 110, 190})
  void joiningTwoCirclesTakesTheirLensOnce(double apartPx) {
    double r = 100;
    Path one = Path.of(new Ellipse2D.Double(-r, -r, 2 * r, 2 * r));
    double half = apartPx / 2;
    double lens = 2 * r * r * StrictMath.acos(half / r) - apartPx * Math.sqrt(r * r - half * half);
    double union = 2 * Math.PI * r * r - lens;
    Path joined = one.joinedWith(one.movedBy(apartPx, 0));
    assertEquals(1, Flattened.area(joined) / union, 0.001);
    assertEquals(2 * r + apartPx, joined.bounds().width(), 1e-3);
    assertEquals(1, moves(joined), "one outline");
  }

  @Test
  void joiningWhatLiesApartKeepsBoth() {
    Path box = Path.of(new Rectangle2D.Double(0, 0, 30, 20));
    Path joined = box.joinedWith(box.movedBy(100, 0));
    assertEquals(1200, Flattened.area(joined), 1e-6);
    assertEquals(2, moves(joined));
    assertEquals(600, Flattened.area(box.joinedWith(box)), 1e-6);
  }

  private static long moves(Path path) {
    return path.steps().stream().filter(Path.Move.class::isInstance).count();
  }

  @Test
  void boxesUniteGrowAndMove() {
    Box box = new Box(1, 2, 3, 4);
    assertEquals(new Box(-1, 2, 5, 8), box.union(new Box(-1, 5, 1, 5)));
    assertEquals(new Box(-1, 0, 7, 8), box.grownBy(2));
    assertEquals(new Box(6, 1, 3, 4), box.movedBy(5, -1));
    assertEquals(new XY(2.5, 4), box.centre());
    assertThrows(IllegalArgumentException.class, () -> new Box(0, 0, -1, 1));
    assertThrows(IllegalArgumentException.class, () -> new Box(0, 0, 1, Double.NaN));
  }
}
