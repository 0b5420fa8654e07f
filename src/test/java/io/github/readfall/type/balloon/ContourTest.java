package io.github.readfall.type.balloon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.Flattened;
import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;

/** The drawn outline of every shape, over every size that a balloon may have. */
class ContourTest {

  private static final double INSIDE_PX = 0.3;
  private static final double BEYOND_PX = 0.5;
  private static final double BOUNDS_PX = 0.05;

  /** No text is flatter than a line of capitals with its margins. */
  private static final double FLATTEST_CAPITALS = 1.25;

  private static final double MARGIN_CAPITALS = 0.75;
  private static final double N = OutlineStyle.SQUARENESS;

  private static final double CORNER_MARGINS = 1.8;

  /**
   * A size to draw.
   *
   * @param a half the inner width
   * @param b half the inner height
   */
  record Size(double a, double b, double capitalPx) {

    static Stream<Size> all() {
      return DoubleStream.of(40, 47, 63, 81, 120, 233, 415, 700)
          .boxed()
          .flatMap(
              a ->
                  DoubleStream.of(1, 1.4, 1.75, 2.2, 2.6)
                      .boxed()
                      .flatMap(r -> Stream.of(20.0, 50.0, 60.0).map(m -> new Size(a, a / r, m))))
          .filter(size -> size.b >= FLATTEST_CAPITALS * size.capitalPx);
    }

    Path outline(ShapeKind kind) {
      return kind.outline(new Enclosed(a, b, 0, 0), style(1));
    }

    OutlineStyle style(long seed) {
      return new OutlineStyle(marginPx(), capitalPx, N, seed);
    }

    double marginPx() {
      return MARGIN_CAPITALS * capitalPx;
    }

    /** How deep a point lies inside the inner area; negative outside. */
    double depth(ShapeKind kind, XY point) {
      return switch (kind) {
        case ELLIPSE, BURST, CLOUD, WAVY -> roundDepth(point);
        case ROUNDED_BOX -> boxDepth(point, Math.min(CORNER_MARGINS * marginPx(), Math.min(a, b)));
        case CAPTION_BOX, ELECTRONIC, NONE -> boxDepth(point, 0);
      };
    }

    /** To first order: the superellipse's equation over the length of its gradient. */
    private double roundDepth(XY p) {
      double x = Math.abs(p.x()) / a;
      double y = Math.abs(p.y()) / b;
      double steep = N * Math.hypot(Math.pow(x, N - 1) / a, Math.pow(y, N - 1) / b);
      return (1 - Math.pow(x, N) - Math.pow(y, N)) / steep;
    }

    /** The exact distance to a box with round corners. */
    private double boxDepth(XY p, double r) {
      double x = Math.abs(p.x()) - (a - r);
      double y = Math.abs(p.y()) - (b - r);
      double outside = Math.hypot(Math.max(x, 0), Math.max(y, 0));
      return r - outside - Math.min(Math.max(x, y), 0);
    }
  }

  @ParameterizedTest
  @EnumSource(value = ShapeKind.class, mode = Mode.EXCLUDE, names = "NONE")
  void theOutlineStaysOutOfTheInnerAreaAndWithinItsReach(ShapeKind kind) {
    Size.all()
        .forEach(
            size -> {
              List<XY> points = Flattened.evenly(size.outline(kind), 40);
              double deepest =
                  points.stream().mapToDouble(p -> size.depth(kind, p)).max().orElseThrow();
              assertTrue(deepest <= INSIDE_PX, () -> kind + " " + size + " comes in " + deepest);
              Box box = size.outline(kind).bounds();
              double reach =
                  Math.max(
                      Math.max(box.right() - size.a, -size.a - box.x()),
                      Math.max(box.bottom() - size.b, -size.b - box.y()));
              assertTrue(
                  reach <= kind.reachPx(size.capitalPx) + BEYOND_PX,
                  () -> kind + " " + size + " reaches " + reach);
            });
  }

  @ParameterizedTest
  @EnumSource(value = ShapeKind.class, mode = Mode.EXCLUDE, names = "NONE")
  void theOutlineReachesNoFurtherFromTheInnerAreaInAnyDirection(ShapeKind kind) {
    Size.all()
        .forEach(
            size -> {
              double furthest =
                  Flattened.evenly(size.outline(kind), 9).stream()
                      .mapToDouble(p -> distance(size, kind, p))
                      .max()
                      .orElseThrow();
              assertTrue(
                  furthest <= kind.reachPx(size.capitalPx) + BEYOND_PX,
                  () -> kind + " " + size + " " + furthest);
            });
  }

  /** Distance from the inner area: the exact one for boxes; for superellipses along the normal. */
  private static double distance(Size size, ShapeKind kind, XY point) {
    if (kind.enclosure(2.5) instanceof BoxEnclosure) {
      return -size.depth(kind, point);
    }
    double x = Math.abs(point.x());
    double y = Math.abs(point.y());
    double low = 0;
    double high = Math.PI / 2;
    for (int i = 0; i < 30; i++) { // where the way to the point is square to the curve
      double t = (low + high) / 2;
      double cos = Math.pow(Math.cos(t), 2 / N);
      double sin = Math.pow(Math.sin(t), 2 / N);
      double outX = Math.pow(cos, N - 1) / size.a();
      double outY = Math.pow(sin, N - 1) / size.b();
      boolean onwards = (x - size.a() * cos) * -outY + (y - size.b() * sin) * outX > 0;
      low = onwards ? t : low;
      high = onwards ? high : t;
    }
    return Math.hypot(
        x - size.a() * Math.pow(Math.cos(low), 2 / N),
        y - size.b() * Math.pow(Math.sin(low), 2 / N));
  }

  @ParameterizedTest
  @EnumSource(value = ShapeKind.class, mode = Mode.EXCLUDE, names = "NONE")
  void theOutlineIsOneClosedPartThatNeverCrossesItself(ShapeKind kind) {
    Size.all()
        .forEach(
            size -> {
              Path outline = size.outline(kind);
              List<Path.Step> steps = outline.steps();
              assertTrue(steps.get(0) instanceof Path.Move);
              assertTrue(steps.get(steps.size() - 1) instanceof Path.Close);
              assertEquals(1, steps.stream().filter(Path.Move.class::isInstance).count());
              assertEquals(1, steps.stream().filter(Path.Close.class::isInstance).count());
              assertSimple(outline, kind + " " + size);
            });
  }

  private record Segment(XY from, XY to) {
    double left() {
      return Math.min(from.x(), to.x());
    }

    double right() {
      return Math.max(from.x(), to.x());
    }

    boolean crosses(Segment other) {
      boolean neighbours = to.equals(other.from) || from.equals(other.to);
      return !neighbours
          && side(other.from) * side(other.to) < 0
          && other.side(from) * other.side(to) < 0;
    }

    private double side(XY point) {
      return Math.signum(
          (to.x() - from.x()) * (point.y() - from.y())
              - (to.y() - from.y()) * (point.x() - from.x()));
    }
  }

  private static void assertSimple(Path outline, String what) {
    List<XY> points = new ArrayList<>(Flattened.evenly(outline, 6));
    if (points.get(0).equals(points.get(points.size() - 1))) {
      points.remove(0);
    }
    List<Segment> segments = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      segments.add(new Segment(points.get(i), points.get((i + 1) % points.size())));
    }
    segments.sort(Comparator.comparingDouble(Segment::left));
    for (int i = 0; i < segments.size(); i++) {
      Segment one = segments.get(i);
      for (int j = i + 1; j < segments.size() && segments.get(j).left() <= one.right(); j++) {
        if (one.crosses(segments.get(j))) {
          fail(what + " crosses itself near " + one.from());
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource(value = ShapeKind.class, mode = Mode.EXCLUDE, names = "NONE")
  void theOutlineGoesOnceRoundTheText(ShapeKind kind) {
    Size.all()
        .forEach(
            size -> {
              double inner = innerArea(size, kind);
              double drawn = Flattened.area(size.outline(kind));
              double reach = kind.reachPx(size.capitalPx()) + BEYOND_PX;
              double most = 4 * (size.a() + reach) * (size.b() + reach);
              assertTrue(drawn > 0.999 * inner && drawn <= most, () -> kind + " " + size);
              assertTrue(size.outline(kind).toShape().contains(0, 0));
            });
  }

  private static double innerArea(Size size, ShapeKind kind) {
    if (kind.enclosure(2.5) instanceof SuperellipseEnclosure) {
      return 3.380935 * size.a() * size.b(); // 4 gamma(1.4)^2 / gamma(1.8)
    }
    double r = Math.min(CORNER_MARGINS * size.marginPx(), Math.min(size.a(), size.b()));
    double corners = kind == ShapeKind.ROUNDED_BOX ? (4 - Math.PI) * r * r : 0;
    return 4 * size.a() * size.b() - corners;
  }

  @ParameterizedTest
  @EnumSource(value = ShapeKind.class, mode = Mode.EXCLUDE, names = "NONE")
  void boundsAreThoseOfADenseWalk(ShapeKind kind) {
    Size.all()
        .filter(size -> size.capitalPx() == 60)
        .forEach(
            size -> {
              List<XY> points = Flattened.evenly(size.outline(kind), 400);
              Box box = size.outline(kind).bounds();
              String what = kind + " " + size;
              assertEquals(most(points.stream().mapToDouble(XY::x)), box.right(), BOUNDS_PX, what);
              assertEquals(most(points.stream().mapToDouble(XY::y)), box.bottom(), BOUNDS_PX, what);
              assertEquals(
                  most(points.stream().mapToDouble(p -> -p.x())), -box.x(), BOUNDS_PX, what);
              assertEquals(
                  most(points.stream().mapToDouble(p -> -p.y())), -box.y(), BOUNDS_PX, what);
            });
  }

  private static double most(DoubleStream values) {
    return values.max().orElseThrow();
  }

  @Test
  void noShapeDrawsNothing() {
    assertTrue(
        ShapeKind.NONE
            .outline(new Enclosed(90, 40, 0, 0), new OutlineStyle(45, 60, N, 1))
            .steps()
            .isEmpty());
    assertEquals(0, ShapeKind.NONE.reachPx(60));
  }

  @ParameterizedTest
  @EnumSource(ShapeKind.class)
  void everyShapeIsFoundByItsWord(ShapeKind kind) {
    assertEquals(kind, ShapeKind.of(kind.word()).orElseThrow());
    assertEquals(kind.word(), kind.word().replaceAll("[^a-z-]", ""));
  }
}
