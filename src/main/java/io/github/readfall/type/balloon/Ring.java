package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A closed part of an outline.
 *
 * @param pieces each beginning where the one before ends, the first where the last does
 */
record Ring(List<Piece> pieces) {

  /** Shorter pieces are what the joining of outlines leaves where they cross at a corner. */
  private static final double SHORT_PX = 0.05;

  Ring {
    pieces = List.copyOf(pieces);
  }

  /** The largest closed part of an outline; the rest are holes in it. */
  static Ring largest(Path outline) {
    return of(outline)
        .max(Comparator.comparingDouble(ring -> Math.abs(ring.areaPx2())))
        .orElseThrow();
  }

  private static Stream<Ring> of(Path outline) {
    List<Ring> rings = new ArrayList<>();
    List<Piece> pieces = new ArrayList<>();
    XY start = new XY(0, 0);
    XY pen = start;
    for (Path.Step step : outline.steps()) {
      if (step instanceof Path.Move move) {
        start = move.to();
        pen = start;
      } else if (step instanceof Path.Close) {
        add(Piece.line(pen, start), pieces);
        rings.add(new Ring(pieces).closed());
        pieces.clear();
        pen = start;
      } else {
        Piece piece =
            step instanceof Path.Curve curve
                ? new Piece(pen, curve, false)
                : Piece.line(pen, ((Path.Line) step).to());
        pen = add(piece, pieces) ? piece.to() : pen;
      }
    }
    return rings.stream().filter(ring -> ring.pieces().size() > 1);
  }

  /** Adds a piece unless it is short; the next one begins where the last one ended. */
  private static boolean add(Piece piece, List<Piece> pieces) {
    return piece.lengthPx() >= SHORT_PX && pieces.add(piece);
  }

  /** The same with its last piece drawn to the start of its first, to a hair. */
  private Ring closed() {
    if (pieces.isEmpty()) {
      return this;
    }
    List<Piece> closed = new ArrayList<>(pieces);
    Piece last = closed.remove(closed.size() - 1);
    XY start = pieces.get(0).from();
    closed.add(
        new Piece(
            last.from(),
            new Path.Curve(last.curve().control1(), last.curve().control2(), start),
            last.straight()));
    return new Ring(closed);
  }

  /** Its area, by its corners and control points: positive if it turns right on the screen. */
  double areaPx2() {
    double twice = 0;
    for (Piece piece : pieces) {
      twice += cross(piece.from(), piece.curve().control1());
      twice += cross(piece.curve().control1(), piece.curve().control2());
      twice += cross(piece.curve().control2(), piece.to());
    }
    return twice / 2;
  }

  private static double cross(XY a, XY b) {
    return a.x() * b.y() - b.x() * a.y();
  }

  /** The turn at the start of a piece, in radians: negative at a corner that goes inwards. */
  double turn(int piece) {
    XY before = pieces.get((piece + pieces.size() - 1) % pieces.size()).endWay();
    XY after = pieces.get(piece).way();
    double turn =
        StrictMath.atan2(cross(before, after), before.x() * after.x() + before.y() * after.y());
    return Math.signum(areaPx2()) * turn;
  }

  Path path() {
    List<Path.Step> steps = new ArrayList<>();
    steps.add(new Path.Move(pieces.get(0).from()));
    pieces.forEach(piece -> steps.add(piece.step()));
    steps.add(new Path.Close());
    return new Path(steps);
  }
}
