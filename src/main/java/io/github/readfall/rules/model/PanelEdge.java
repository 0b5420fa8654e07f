package io.github.readfall.rules.model;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.Region;
import io.github.readfall.base.geom.XY;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * One side of a panel, as a line.
 *
 * @param upright true if it runs down the strip; else across
 * @param at its x if it is upright, else its y, in strip pixels
 * @param from its start on the other axis
 * @param to its end on the other axis
 */
public record PanelEdge(boolean upright, double at, double from, double to) {

  /** The four sides of a panel. */
  public static Stream<PanelEdge> of(Box panel) {
    return Stream.of(
        new PanelEdge(true, panel.x(), panel.y(), panel.bottom()),
        new PanelEdge(true, panel.right(), panel.y(), panel.bottom()),
        new PanelEdge(false, panel.y(), panel.x(), panel.right()),
        new PanelEdge(false, panel.bottom(), panel.x(), panel.right()));
  }

  /** The line as a box without breadth. */
  public Box box() {
    return upright ? Box.ofEdges(at, from, at, to) : Box.ofEdges(from, at, to, at);
  }

  /** Returns true if it is on an edge of the strip or beyond, where no line is drawn. */
  public boolean isOnEdgeOf(Box strip) {
    double end = upright ? strip.right() : strip.bottom();
    return at <= Deliberate.DOCKED_PX || at >= end - Deliberate.DOCKED_PX;
  }

  /**
   * The distance by which an outline crosses this line: the lesser of the parts on either side.
   * Negative if it is clear by so much; empty if it is past the ends of the line.
   */
  public OptionalDouble crossingPx(Region body) {
    Region beside = beside(body);
    if (beside.isEmpty()) {
      return OptionalDouble.empty();
    }
    Box box = beside.bounds();
    return OptionalDouble.of(
        upright
            ? Math.min(at - box.x(), box.right() - at)
            : Math.min(at - box.y(), box.bottom() - at));
  }

  /** The part of an outline beside this line. */
  private Region beside(Region body) {
    Box box = body.bounds();
    boolean whole =
        upright ? box.y() >= from && box.bottom() <= to : box.x() >= from && box.right() <= to;
    if (whole) {
      return body;
    }
    Box wide = box.union(box()).grownBy(1);
    return body.intersection(
        Region.of(
            upright
                ? Box.ofEdges(wide.x(), from, wide.right(), to)
                : Box.ofEdges(from, wide.y(), to, wide.bottom())));
  }

  /** A shift across this line, towards greater coordinates if the length is positive. */
  public XY across(double px) {
    return upright ? new XY(px, 0) : new XY(0, px);
  }

  /**
   * The side of this line that most of an outline is on: 1 towards greater coordinates, else -1.
   */
  public double sideOf(Box box) {
    double middle = upright ? box.centre().x() : box.centre().y();
    return middle >= at ? 1 : -1;
  }
}
