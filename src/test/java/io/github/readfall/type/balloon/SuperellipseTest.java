package io.github.readfall.type.balloon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.geom.Flattened;
import io.github.readfall.base.geom.XY;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SuperellipseTest {

  private static final double A = 400;
  private static final double B = 210;

  /** To a first order: what the equation is off, over the length of its gradient. */
  private static double offPx(Superellipse round, XY at) {
    double n = round.exponent();
    double x = Math.abs(at.x()) / round.a();
    double y = Math.abs(at.y()) / round.b();
    double steep = n * Math.hypot(Math.pow(x, n - 1) / round.a(), Math.pow(y, n - 1) / round.b());
    return Math.abs(Math.pow(x, n) + Math.pow(y, n) - 1) / steep;
  }

  @ParameterizedTest
  @CsvSource({"2,0.00001", "2.5,0.0001", "3,0.0001", "4,0.0003"})
  void theDrawnCurvesFollowTheEquation(double exponent, double share) {
    assertFollows(exponent, share);
  }

  @Test
  void noExponentIsDrawnWorseThanOthers() {
    for (double exponent = 2; exponent <= Superellipse.MOST_EXPONENT; exponent += 0.01) {
      assertFollows(exponent, 0.0006);
    }
  }

  private static void assertFollows(double exponent, double share) {
    Superellipse round = new Superellipse(A, B, exponent);
    List<XY> points = Flattened.evenly(round.path(), 100);
    double most = points.stream().mapToDouble(at -> offPx(round, at)).max().orElseThrow();
    assertTrue(most <= share * A, () -> exponent + " is off by " + most);
  }

  /**
   * Areas in shares of ab: 4 gamma(1 + 1/n)^2 / gamma(1 + 2/n), computed with another program.
   *
   * @see <a href="https://archive.lib.msu.edu/crcmath/math/math/s/s858.htm">CRC Encyclopedia of
   *     Mathematics, Superellipse</a>
   */
  @ParameterizedTest
  @CsvSource({"2,3.141593", "2.2,3.251409", "2.5,3.380935", "3,3.533278", "4,3.708149"})
  void theDrawnAreaIsThatOfTheFormula(double exponent, double areaOfUnit) {
    double drawn = Flattened.area(new Superellipse(A, B, exponent).path());
    assertEquals(areaOfUnit * A * B, drawn, 0.0003 * drawn);
  }

  @ParameterizedTest
  @ValueSource(doubles = {2, 2.5, 4})
  void pointsAreOnTheCurveAndOutwardsIsSquareToIt(double exponent) {
    Superellipse round = new Superellipse(A, B, exponent);
    for (double angle = 0.05; angle < 2 * Math.PI; angle += 0.1) {
      assertEquals(0, offPx(round, round.at(angle)), 1e-9);
      XY before = round.at(angle - 1e-5);
      XY after = round.at(angle + 1e-5);
      XY out = round.outwards(angle);
      double across = (after.x() - before.x()) * out.x() + (after.y() - before.y()) * out.y();
      assertEquals(0, across / before.distanceTo(after), 1e-4);
      assertEquals(1, Math.hypot(out.x(), out.y()), 1e-12);
      assertTrue(!round.holds(round.outside(angle, 1)) && round.holds(round.outside(angle, -1)));
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {2, 2.5, 4})
  void wayIsAsLongAsTheDrawnCurveAndShared(double exponent) {
    Superellipse round = new Superellipse(A, B, exponent);
    ArcLength way = new ArcLength(round);
    assertEquals(Flattened.length(round.path()), way.lengthPx(), 1e-3 * way.lengthPx());
    for (double share = -0.4; share < 1.3; share += 0.07) {
      double part = 0;
      for (int i = 0; i < 200; i++) {
        double from = way.angle(share + 0.05 * i / 200);
        part += round.at(from).distanceTo(round.at(way.angle(share + 0.05 * (i + 1) / 200)));
      }
      assertEquals(0.05 * way.lengthPx(), part, 2e-3 * way.lengthPx());
    }
  }

  @Test
  void anExponentBelowTwoIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Superellipse(A, B, 1.9));
    assertThrows(IllegalArgumentException.class, () -> new Superellipse(A, B, 6.1));
  }
}
