package io.github.readfall.type.balloon;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How far inside an outline a point lies, against points that were put there. */
class EnclosureTest {

  /** A point on the normal of an ellipse is as far from it as it was put, on either side. */
  @ParameterizedTest
  @ValueSource(doubles = {0.001, 0.3, 0.8, 1.2, 1.5707, 2.4, 3.9, 5.5})
  void aPointOnTheNormalIsAsFarAsItWasPut(double angle) {
    for (double[] half : new double[][] {{300, 120}, {120, 300}, {200, 200}, {500, 499}}) {
      double a = half[0];
      double b = half[1];
      double x = a * StrictMath.cos(angle);
      double y = b * StrictMath.sin(angle);
      double nx = x / (a * a);
      double ny = y / (b * b);
      double length = Math.sqrt(nx * nx + ny * ny);
      for (double inside : new double[] {-250, -10, 0, 10, 40}) {
        double px = x - inside * nx / length;
        double py = y - inside * ny / length;
        assertEquals(inside, new SuperellipseEnclosure(2).insidePx(a, b, 24, px, py), 1e-5);
      }
    }
  }

  /** A superellipse's edge is measured by the nearest of very many points of it. */
  @ParameterizedTest
  @CsvSource({"0, 0", "40, 10", "280, 5", "10, 115", "200, 70", "260, 100", "400, 0", "330, 200"})
  void aPointIsAsFarAsTheNearestPointOfTheSuperellipse(double x, double y) {
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= 200_000; i++) {
      double turn = Math.PI / 2 * i / 200_000;
      double across = 300 * StrictMath.pow(StrictMath.cos(turn), 2 / 2.5);
      double along = 120 * StrictMath.pow(StrictMath.sin(turn), 2 / 2.5);
      nearest = Math.min(nearest, Math.hypot(across - x, along - y));
    }
    boolean in = StrictMath.pow(x / 300, 2.5) + StrictMath.pow(y / 120, 2.5) < 1;
    double found = new SuperellipseEnclosure(2.5).insidePx(300, 120, 24, x, y);
    assertEquals(in ? nearest : -nearest, found, 1e-3);
  }

  @ParameterizedTest
  @CsvSource({
    "300, 120, 0, 0, 120",
    "120, 300, 0, 0, 120",
    "200, 200, 0, 0, 200",
    "200, 200, 300, 400, -300",
    "300, 120, 299, 0, 1",
    "300, 120, 0, 130, -10"
  })
  void anEllipse(double a, double b, double x, double y, double inside) {
    assertEquals(inside, new SuperellipseEnclosure(2).insidePx(a, b, 24, x, y), 1e-5);
  }

  /** Corners of 1.8 margins, here 36: on their diagonal they are 36 (√2 - 1) short. */
  @ParameterizedTest
  @CsvSource({
    "0, 0, 120",
    "290, 0, 10",
    "-310, 10, -10",
    "0, -119, 1",
    "300, 120, -14.9117",
    "264, 84, 36",
    "274, 94, 21.8579"
  })
  void aRoundedBox(double x, double y, double inside) {
    assertEquals(inside, new BoxEnclosure(1.8).insidePx(300, 120, 20, x, y), 1e-4);
  }
}
