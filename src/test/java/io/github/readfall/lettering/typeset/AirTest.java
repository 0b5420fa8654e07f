package io.github.readfall.lettering.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.geom.Box;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Script;
import io.github.readfall.script.read.ScriptReader;
import io.github.readfall.type.balloon.ShapeKind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Air between letters and outline: at least 0.6 of a capital anywhere, and nearly even on all four
 * sides. That letterers want both is common practice; the figures are house defaults.
 */
class AirTest {

  private static final double LEAST_CAPITALS = 0.6;
  private static final double MOST_UNEVEN = 2;
  private static final int POINTS = 2_000;

  @ParameterizedTest
  @ValueSource(strings = {"ep01", "ep02"})
  void airIsAmpleAndNearlyEven(String episode) throws IOException {
    List<Double> uneven = new ArrayList<>();
    for (SetBalloon balloon : set(episode)) {
      if (balloon.look().shape().isRound()) {
        double air = least(balloon) / balloon.outlineStyle().capitalPx();
        assertTrue(air >= LEAST_CAPITALS, balloon.cue().text().plain() + " has " + air);
        uneven.add(unevenness(balloon));
      }
    }
    List<Double> sorted = uneven.stream().sorted().toList();
    double median = sorted.get(sorted.size() / 2);
    assertTrue(sorted.size() > 20 && median <= MOST_UNEVEN, "median " + median);
  }

  @ParameterizedTest
  @ValueSource(strings = {"ep01", "ep02"})
  void captionsHaveTheSameMarginOnAllSides(String episode) throws IOException {
    int captions = 0;
    for (SetBalloon balloon : set(episode)) {
      if (balloon.look().shape() == ShapeKind.CAPTION_BOX) {
        captions++;
        Box text = text(balloon);
        double[] sides = sides(text, balloon.inner());
        for (double side : sides) {
          assertEquals(balloon.marginPx(), side, 0.5, balloon.cue().text().plain());
        }
      }
    }
    assertTrue(captions > 0);
  }

  private static List<SetBalloon> set(String episode) throws IOException {
    String text =
        Files.readString(Path.of("sample-scripts", "overdue-tide", episode, "script.txt"));
    Script script = new ScriptReader().read(text, Keywords.ENGLISH).script();
    return new Typesetter(Sample.shelf(), HouseStyle.DEFAULT).set(script).balloons();
  }

  /** The least distance of the superellipse from any line's box. */
  private static double least(SetBalloon balloon) {
    double n = balloon.outlineStyle().squareness();
    Box inner = balloon.inner();
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < POINTS; i++) {
      double c = Math.cos(2 * Math.PI * i / POINTS);
      double s = Math.sin(2 * Math.PI * i / POINTS);
      double r = Math.pow(Math.pow(Math.abs(c), n) + Math.pow(Math.abs(s), n), -1 / n);
      double x = inner.centre().x() + r * c * inner.width() / 2;
      double y = inner.centre().y() + r * s * inner.height() / 2;
      for (SetLine line : balloon.lines()) {
        Box box = box(line);
        double dx = Math.max(0, Math.max(box.x() - x, x - box.right()));
        double dy = Math.max(0, Math.max(box.y() - y, y - box.bottom()));
        least = Math.min(least, Math.hypot(dx, dy));
      }
    }
    return least;
  }

  private static double unevenness(SetBalloon balloon) {
    double[] sides = sides(text(balloon), balloon.inner());
    double most = Math.max(Math.max(sides[0], sides[1]), Math.max(sides[2], sides[3]));
    double least = Math.min(Math.min(sides[0], sides[1]), Math.min(sides[2], sides[3]));
    return most / least;
  }

  private static double[] sides(Box text, Box inner) {
    return new double[] {
      text.x() - inner.x(),
      text.y() - inner.y(),
      inner.right() - text.right(),
      inner.bottom() - text.bottom()
    };
  }

  private static Box text(SetBalloon balloon) {
    return balloon.lines().stream().map(AirTest::box).reduce(Box::union).orElseThrow();
  }

  private static Box box(SetLine set) {
    var box = set.line().box();
    return Box.ofEdges(
        set.xPx() + box.left(),
        set.baselinePx() + box.top(),
        set.xPx() + box.right(),
        set.baselinePx() + box.bottom());
  }
}
