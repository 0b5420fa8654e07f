package io.github.readfall.cli.report;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.draw.BalloonArtist;
import io.github.readfall.draw.Mark;
import io.github.readfall.draw.render.Java2dPainter;
import io.github.readfall.lettering.typeset.SetBalloon;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Proves in pixels that no ink comes nearer to its outline than the margin, less the pixel of
 * antialiasing: the letters as painted, the outline as reported.
 */
class InkProofTest {

  private static final double ANTIALIASING_PX = 1;
  private static final int EDGE_PX = 24;
  private static final int HALF_COVERED = 128;

  @TestFactory
  Stream<DynamicTest> noInkLeavesTheOutlineLessItsMargin() {
    return Fitted.all().stream()
        .flatMap(
            fitted ->
                IntStream.range(0, fitted.proof().set().balloons().size())
                    .mapToObj(
                        i ->
                            dynamicTest(
                                fitted.nameOf(fitted.report().path("balloons").path(i)),
                                () -> check(fitted, i))));
  }

  private static void check(Fitted fitted, int i) {
    SetBalloon balloon = fitted.proof().set().balloons().get(i);
    double least = least(fitted, i, 0);
    assertTrue(
        least >= balloon.marginPx() - ANTIALIASING_PX,
        least + " px instead of " + balloon.marginPx());
  }

  @Test
  void everyShapeWasReallyLookedAt() {
    long shapes =
        Fitted.all().stream()
            .flatMap(fitted -> fitted.proof().set().balloons().stream())
            .map(balloon -> balloon.look().shape())
            .distinct()
            .count();
    assertTrue(shapes == 8, "only " + shapes + " shapes");
  }

  @Test
  void inkThatIsMovedIsFound() {
    Fitted shapes = Fitted.of("src/test/resources/report/shapes/ep01");
    List<SetBalloon> balloons = shapes.proof().set().balloons();
    for (int i = 0; i < balloons.size(); i++) {
      double moved = least(shapes, i, balloons.get(i).marginPx() + 40);
      assertTrue(moved < balloons.get(i).marginPx() - ANTIALIASING_PX, "not found: " + i);
    }
  }

  /** How near the ink comes to the outline when it is moved down by so much. */
  private static double least(Fitted fitted, int i, double downPx) {
    SetBalloon balloon = fitted.proof().set().balloons().get(i);
    String path = fitted.report().path("balloons").path(i).path("outline").path("path").asString();
    Canvas canvas = new Canvas(balloon, downPx);
    return path.isEmpty() ? canvas.leastToBox(balloon) : canvas.least(SvgOutline.parse(path));
  }

  /** A balloon's letters, painted black on white. */
  private static final class Canvas {

    private final BufferedImage ink;

    Canvas(SetBalloon balloon, double downPx) {
      int width = (int) Math.ceil(balloon.box().width()) + 2 * EDGE_PX;
      int height = (int) Math.ceil(balloon.box().height()) + 2 * EDGE_PX;
      this.ink = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
      Graphics2D g = start(ink, Color.WHITE);
      Java2dPainter painter = new Java2dPainter(g);
      XY at = new XY(0, downPx);
      letters(BalloonArtist.draw(balloon, at, List.of())).forEach(mark -> mark.paintOn(painter));
      g.dispose();
    }

    private static Graphics2D start(BufferedImage image, Color paper) {
      Graphics2D g = image.createGraphics();
      g.setColor(paper);
      g.fillRect(0, 0, image.getWidth(), image.getHeight());
      g.translate(EDGE_PX, EDGE_PX);
      return g;
    }

    private static List<Mark.Glyphs> letters(Mark.Group group) {
      List<Mark.Glyphs> letters = new ArrayList<>();
      for (Mark mark : group.marks()) {
        if (mark instanceof Mark.Glyphs glyphs) {
          letters.add(new Mark.Glyphs(glyphs.run(), glyphs.at(), new Colour(0)));
        }
      }
      return letters;
    }

    private boolean isInk(int x, int y) {
      return ink.getRaster().getSample(x, y, 0) < 255 - HALF_COVERED;
    }

    /**
     * The least distance from the middle of an inked pixel to the outline. A distance transform
     * finds the pixels that come near; those are then measured exactly.
     */
    double least(SvgOutline outline) {
      DistanceMap outside = new DistanceMap(ink.getWidth(), ink.getHeight(), inside(outline));
      double nearest = Double.POSITIVE_INFINITY;
      for (int y = 0; y < ink.getHeight(); y++) {
        for (int x = 0; x < ink.getWidth(); x++) {
          if (isInk(x, y)) {
            nearest = Math.min(nearest, outside.at(x, y));
          }
        }
      }
      double least = Double.POSITIVE_INFINITY;
      for (int y = 0; y < ink.getHeight(); y++) {
        for (int x = 0; x < ink.getWidth(); x++) {
          // A pixel outside lies at most a pixel's diagonal beyond the outline.
          if (isInk(x, y) && outside.at(x, y) <= nearest + Math.sqrt(2)) {
            least = Math.min(least, outline.depth(x + 0.5 - EDGE_PX, y + 0.5 - EDGE_PX));
          }
        }
      }
      return least;
    }

    private boolean[] inside(SvgOutline outline) {
      BufferedImage image =
          new BufferedImage(ink.getWidth(), ink.getHeight(), BufferedImage.TYPE_BYTE_GRAY);
      Graphics2D g = start(image, Color.BLACK);
      g.setColor(Color.WHITE);
      g.fill(outline.shape());
      g.dispose();
      boolean[] inside = new boolean[image.getWidth() * image.getHeight()];
      for (int i = 0; i < inside.length; i++) {
        inside[i] = image.getRaster().getSample(i % image.getWidth(), i / image.getWidth(), 0) > 0;
      }
      return inside;
    }

    /** Without an outline: how far inside the box that bounds it the ink stays. */
    double leastToBox(SetBalloon balloon) {
      double least = Double.POSITIVE_INFINITY;
      for (int y = 0; y < ink.getHeight(); y++) {
        for (int x = 0; x < ink.getWidth(); x++) {
          if (isInk(x, y)) {
            double across = x + 0.5 - EDGE_PX;
            double down = y + 0.5 - EDGE_PX;
            least = Math.min(least, Math.min(across, balloon.box().width() - across));
            least = Math.min(least, Math.min(down, balloon.box().height() - down));
          }
        }
      }
      return least;
    }
  }

  /**
   * How far each pixel is from the nearest that is outside, exactly (Felzenszwalb and Huttenlocher
   * 2012, Distance Transforms of Sampled Functions, Theory of Computing 8).
   */
  private static final class DistanceMap {

    private static final double FAR = 1e12;

    private final int width;
    private final double[] squares;

    DistanceMap(int width, int height, boolean[] inside) {
      this.width = width;
      this.squares = new double[inside.length];
      for (int i = 0; i < inside.length; i++) {
        squares[i] = inside[i] ? FAR : 0;
      }
      for (int x = 0; x < width; x++) {
        spread(x, width, height);
      }
      for (int y = 0; y < height; y++) {
        spread(y * width, 1, width);
      }
    }

    double at(int x, int y) {
      return Math.sqrt(squares[y * width + x]);
    }

    private void spread(int start, int step, int count) {
      double[] f = new double[count];
      int[] parabola = new int[count];
      double[] from = new double[count + 1];
      for (int i = 0; i < count; i++) {
        f[i] = squares[start + i * step];
      }
      int last = 0;
      from[0] = Double.NEGATIVE_INFINITY;
      from[1] = Double.POSITIVE_INFINITY;
      for (int q = 1; q < count; q++) {
        double meet = meet(f, q, parabola[last]);
        while (meet <= from[last]) {
          last--;
          meet = meet(f, q, parabola[last]);
        }
        last++;
        parabola[last] = q;
        from[last] = meet;
        from[last + 1] = Double.POSITIVE_INFINITY;
      }
      int at = 0;
      for (int q = 0; q < count; q++) {
        while (from[at + 1] < q) {
          at++;
        }
        double away = q - parabola[at];
        squares[start + q * step] = away * away + f[parabola[at]];
      }
    }

    private static double meet(double[] f, int q, int p) {
      return (f[q] + (double) q * q - f[p] - (double) p * p) / (2.0 * q - 2.0 * p);
    }
  }
}
