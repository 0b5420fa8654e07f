package io.github.readfall.base.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.Endurance;
import io.github.readfall.type.balloon.Enclosed;
import io.github.readfall.type.balloon.OutlineStyle;
import io.github.readfall.type.balloon.ShapeKind;
import java.awt.geom.Ellipse2D;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RegionTest {

  private static final int SEEDS = Endurance.rounds(50, 200);
  private static final List<ShapeKind> SHAPES =
      List.of(ShapeKind.ELLIPSE, ShapeKind.ROUNDED_BOX, ShapeKind.CAPTION_BOX, ShapeKind.BURST);

  private static Path circle(double x, double y, double r) {
    return Path.of(new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r));
  }

  /** The distance of two circles is that of their middles less both radii. */
  @ParameterizedTest
  @CsvSource({"300, 0, 100, 120", "-210, 205, 100, 120", "3, -1000, 20, 400", "90, 120, 49, 100.5"})
  void circlesAreAsFarApartAsTheirMiddlesLessTheirRadii(double dx, double dy, double r, double s) {
    Region one = Region.of(circle(500, 700, r));
    Region other = Region.of(circle(500 + dx, 700 + dy, s));
    double gap = Math.sqrt(dx * dx + dy * dy) - r - s;
    assertEquals(gap, one.distanceTo(other), 0.1);
    List<XY> nearest = one.nearest(other);
    assertEquals(gap, nearest.get(0).distanceTo(nearest.get(1)), 0.1);
    assertEquals(r, nearest.get(0).distanceTo(new XY(500, 700)), 0.1);
    assertEquals(s, nearest.get(1).distanceTo(new XY(500 + dx, 700 + dy)), 0.1);
    assertEquals(new XY(0, 0), one.shiftOff(other));
  }

  /** The shortest way apart for two circles is along the line of their middles. */
  @ParameterizedTest
  @CsvSource({"100, 0", "-60, 90", "3, -4", "0, 219"})
  void circlesComeApartAlongTheLineOfTheirMiddles(double dx, double dy) {
    Region one = Region.of(circle(500, 700, 100));
    Region other = Region.of(circle(500 + dx, 700 + dy, 120));
    double length = Math.sqrt(dx * dx + dy * dy);
    XY wayOff = other.shiftOff(one);
    double depth = 220 - length;
    assertEquals(depth, wayOff.distanceTo(new XY(0, 0)), 0.1);
    assertEquals(0, new XY(dx / length * depth, dy / length * depth).distanceTo(wayOff), 7);
  }

  @ParameterizedTest
  @CsvSource({
    "70, 0, 30, 0",
    "90, 45, 0, 5",
    "-95, 10, -5, 0",
    "10, -49.5, 0, -0.5",
    "101, 0, 0, 0"
  })
  void boxesComeApartOnTheirShorterSide(double dx, double dy, double offX, double offY) {
    Region one = Region.of(new Box(10, 20, 100, 50));
    XY wayOff = one.movedBy(dx, dy).shiftOff(one);
    assertEquals(offX, wayOff.x(), 1e-9);
    assertEquals(offY, wayOff.y(), 1e-9);
  }

  @Test
  void regionsLieWhereTheirOutlinesLie() {
    for (int seed = 0; seed < SEEDS; seed++) {
      Path path = random(new SplittableRandom(seed));
      Box box = path.bounds();
      Box bounds = Region.of(path).bounds();
      assertEquals(box.x(), bounds.x(), 0.1);
      assertEquals(box.y(), bounds.y(), 0.1);
      assertEquals(box.bottom(), bounds.bottom(), 0.1);
    }
  }

  /** Against plain measuring from point to side, all against all. */
  @Test
  void distancesAreThoseOfDensePoints() {
    int apart = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Path one = random(random);
      Path other = random(random);
      double measured = measured(one, other);
      apart += measured > 0 ? 1 : 0;
      assertEquals(measured, Region.of(one).distanceTo(Region.of(other)), 0.3, "seed " + seed);
    }
    assertTrue(apart > SEEDS / 4 && apart < SEEDS * 3 / 4, apart + " pairs were apart");
  }

  private static Path random(SplittableRandom random) {
    ShapeKind shape = SHAPES.get(random.nextInt(SHAPES.size()));
    double a = random.nextDouble(60, 300);
    double b = random.nextDouble(40, 200);
    return shape
        .outline(
            new Enclosed(a, b, 0, 0),
            new OutlineStyle(random.nextDouble(10, 30), 30, 2.5, random.nextLong()))
        .movedBy(random.nextDouble(0, 700), random.nextDouble(0, 700));
  }

  private static double measured(Path one, Path other) {
    List<XY> ones = Flattened.evenly(one, 24);
    List<XY> others = Flattened.evenly(other, 24);
    boolean overlap =
        dense(ones).anyMatch(at -> other.toShape().contains(at.x(), at.y()))
            || dense(others).anyMatch(at -> one.toShape().contains(at.x(), at.y()));
    return overlap ? 0 : Math.min(nearest(ones, others), nearest(others, ones));
  }

  /** Eighty points on every side, so that outlines that cross without a corner inside are seen. */
  private static Stream<XY> dense(List<XY> corners) {
    return IntStream.range(0, corners.size() * 80)
        .mapToObj(
            i -> {
              XY to = corners.get((i / 80 + 1) % corners.size());
              return corners.get(i / 80).towards(to, i % 80 / 80.0);
            });
  }

  private static double nearest(List<XY> points, List<XY> corners) {
    return IntStream.range(0, corners.size())
        .mapToDouble(
            i -> {
              XY from = corners.get(i);
              XY to = corners.get((i + 1) % corners.size());
              return points.stream().mapToDouble(at -> distance(at, from, to)).min().orElseThrow();
            })
        .min()
        .orElseThrow();
  }

  private static double distance(XY at, XY from, XY to) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double square = dx * dx + dy * dy;
    double along = square == 0 ? 0 : ((at.x() - from.x()) * dx + (at.y() - from.y()) * dy) / square;
    return at.distanceTo(from.towards(to, Math.max(0, Math.min(1, along))));
  }

  /** Against the least overlap of the two shadows, over 3600 directions. */
  @Test
  void theWayOffIsTheShortestOfAllDirections() {
    int overlaps = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Path one = random(random);
      Path other = random(random);
      double shortest = shortestWayOff(one, other);
      XY wayOff = Region.of(one).shiftOff(Region.of(other));
      double length = wayOff.distanceTo(new XY(0, 0));
      assertEquals(Math.max(0, shortest), length, 0.1 + 0.001 * length, "seed " + seed);
      overlaps += length > 0 ? 1 : 0;
      assertTrue(
          Region.of(one).movedBy(wayOff.x(), wayOff.y()).intersection(Region.of(other)).areaPx2()
              < 0.01);
    }
    assertTrue(overlaps > SEEDS / 4, overlaps + " pairs overlapped");
  }

  private static double shortestWayOff(Path one, Path other) {
    List<XY> ones = Flattened.evenly(one, 24);
    List<XY> others = Flattened.evenly(other, 24);
    return IntStream.range(0, 3600)
        .mapToDouble(i -> StrictMath.toRadians(i / 10.0))
        .map(
            angle -> {
              double x = StrictMath.cos(angle);
              double y = StrictMath.sin(angle);
              double farthest =
                  others.stream().mapToDouble(at -> at.x() * x + at.y() * y).max().orElseThrow();
              double least =
                  ones.stream().mapToDouble(at -> at.x() * x + at.y() * y).min().orElseThrow();
              return farthest - least;
            })
        .min()
        .orElseThrow();
  }

  @Test
  void aLineCoversNothingAndHasItsLength() {
    Region box = Region.of(new Box(0, 0, 100, 50));
    Region line = Region.line(new XY(50, 25), new XY(50, 125));
    assertEquals(100, line.lengthPx(), 1e-9);
    assertEquals(75, line.minus(box).lengthPx(), 1e-9);
    assertEquals(new XY(0, 0), box.shiftOff(line));
    assertEquals(50, box.extentPx(new XY(7, 0), new XY(7, 3)), 1e-9);
    assertEquals(100, box.extentPx(new XY(0, 7), new XY(-9, 7)), 1e-9);
    assertEquals(0, box.extentPx(new XY(7, 7), new XY(7, 7)), 1e-9);
  }

  @Test
  void anEmptyOutlineIsNowhere() {
    Region nothing = Region.of(new Path(List.of()));
    assertTrue(nothing.isEmpty());
    assertFalse(nothing.meets(Region.of(new Box(-5, -5, 10, 10))));
    assertEquals(new XY(0, 0), nothing.shiftOff(Region.of(new Box(-5, -5, 10, 10))));
  }
}
