package io.github.readfall.base.geom;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * An outline of straight and curved steps.
 *
 * @param steps in drawing order; the first of each closed part is a {@link Move}
 */
public record Path(List<Step> steps) {

  /** One step of the pen. */
  public sealed interface Step {
    /** The same step with its points put elsewhere. */
    Step mapped(UnaryOperator<XY> place);
  }

  /** Lifts the pen and sets it down. */
  public record Move(XY to) implements Step {
    @Override
    public Move mapped(UnaryOperator<XY> place) {
      return new Move(place.apply(to));
    }
  }

  /** A straight line. */
  public record Line(XY to) implements Step {
    @Override
    public Line mapped(UnaryOperator<XY> place) {
      return new Line(place.apply(to));
    }
  }

  /** A cubic Bézier curve. */
  public record Curve(XY control1, XY control2, XY to) implements Step {
    @Override
    public Curve mapped(UnaryOperator<XY> place) {
      return new Curve(place.apply(control1), place.apply(control2), place.apply(to));
    }

    /**
     * The point at a share of a curve, by de Casteljau's construction.
     *
     * @param from start of the curve
     * @param share 0 at its start, 1 at its end
     */
    public XY at(XY from, double share) {
      XY a = from.towards(control1, share);
      XY b = control1.towards(control2, share);
      XY c = control2.towards(to, share);
      return a.towards(b, share).towards(b.towards(c, share), share);
    }
  }

  /** A straight line back to the last {@link Move}. */
  public record Close() implements Step {
    @Override
    public Close mapped(UnaryOperator<XY> place) {
      return this;
    }
  }

  public Path {
    steps = List.copyOf(steps);
  }

  /** Straight lines from corner to corner, closed. */
  public static Path polygon(List<XY> corners) {
    List<Step> steps = new ArrayList<>();
    for (XY corner : corners) {
      steps.add(steps.isEmpty() ? new Move(corner) : new Line(corner));
    }
    steps.add(new Close());
    return new Path(steps);
  }

  /** The steps of a shape, quadratic curves raised to cubic ones. */
  public static Path of(Shape shape) {
    List<Step> steps = new ArrayList<>();
    double[] c = new double[6];
    XY pen = new XY(0, 0);
    for (PathIterator it = shape.getPathIterator(null); !it.isDone(); it.next()) {
      int kind = it.currentSegment(c);
      Step step = step(kind, c, pen);
      steps.add(step);
      pen = end(step, pen);
    }
    return new Path(steps);
  }

  private static Step step(int kind, double[] c, XY pen) {
    return switch (kind) {
      case PathIterator.SEG_MOVETO -> new Move(new XY(c[0], c[1]));
      case PathIterator.SEG_LINETO -> new Line(new XY(c[0], c[1]));
      case PathIterator.SEG_QUADTO -> cubic(pen, new XY(c[0], c[1]), new XY(c[2], c[3]));
      case PathIterator.SEG_CUBICTO ->
          new Curve(new XY(c[0], c[1]), new XY(c[2], c[3]), new XY(c[4], c[5]));
      default -> new Close();
    };
  }

  private static Curve cubic(XY from, XY control, XY to) {
    return new Curve(from.towards(control, 2.0 / 3), to.towards(control, 2.0 / 3), to);
  }

  private static XY end(Step step, XY pen) {
    if (step instanceof Move move) {
      return move.to();
    }
    if (step instanceof Line line) {
      return line.to();
    }
    return step instanceof Curve curve ? curve.to() : pen;
  }

  /** The same outline for Java2D: a fresh copy each time, which the caller may keep. */
  public Path2D toShape() {
    Path2D shape = new Path2D.Double(Path2D.WIND_NON_ZERO, steps.size());
    for (Step step : steps) {
      if (step instanceof Move move) {
        shape.moveTo(move.to().x(), move.to().y());
      } else if (step instanceof Line line) {
        shape.lineTo(line.to().x(), line.to().y());
      } else if (step instanceof Curve curve) {
        shape.curveTo(
            curve.control1().x(),
            curve.control1().y(),
            curve.control2().x(),
            curve.control2().y(),
            curve.to().x(),
            curve.to().y());
      } else {
        shape.closePath();
      }
    }
    return shape;
  }

  public Path movedBy(double dx, double dy) {
    return mapped(point -> point.plus(dx, dy));
  }

  /** The same outline scaled from the origin, by one factor across and another along. */
  public Path scaledBy(double across, double along) {
    return mapped(point -> new XY(point.x() * across, point.y() * along));
  }

  /** The same outline with its points put elsewhere. */
  public Path mapped(UnaryOperator<XY> place) {
    List<Step> mapped = new ArrayList<>(steps.size());
    for (Step step : steps) {
      mapped.add(step.mapped(place));
    }
    return new Path(mapped);
  }

  /** This outline and another as one, without the line between them where they overlap. */
  public Path joinedWith(Path other) {
    Area area = new Area(toShape());
    area.add(new Area(other.toShape()));
    return of(area);
  }

  /**
   * This outline grown by a length on every side, corners rounded.
   *
   * @param by positive
   */
  public Path grownBy(double by) {
    float width = (float) (2 * by);
    Shape edge =
        new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND)
            .createStrokedShape(toShape());
    Area area = new Area(toShape());
    area.add(new Area(edge));
    return of(area);
  }

  /** Where its steps end, in drawing order. */
  public Stream<XY> ends() {
    return steps.stream()
        .filter(step -> !(step instanceof Close))
        .map(step -> end(step, new XY(0, 0)));
  }

  /** The exact bounding box of the drawn curve, control points left out. */
  public Box bounds() {
    return Extremes.of(steps);
  }
}
