package io.github.readfall.type.balloon;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Rounds the corners that go into a ring, by a curve that leaves both sides along their tangents.
 */
final class RoundedCorners {

  /** In radii. House defaults, no source. */
  private static final double LEAST = 0.9;

  static final double MOST = 2.2;
  private static final double ONE = 1.4;
  private static final double NEARLY = 0.9;
  private static final double UNSEEN = 0.6;

  /** Smaller turns are not seen, in radians: 8 degrees. */
  private static final double SHARP = Math.toRadians(8);

  /** Control points this far towards the meeting of the tangents: between a circle and a curl. */
  private static final double FULL = 0.6;

  private final Ring ring;
  private final double radiusPx;
  private final double[] starts;
  private final double[] turns;
  private final boolean[] rounded;

  private RoundedCorners(Ring ring, Predicate<XY> kept, double radiusPx) {
    this.ring = ring;
    this.radiusPx = radiusPx;
    int count = ring.pieces().size();
    this.starts = new double[count + 1];
    this.turns = new double[count];
    this.rounded = new boolean[count];
    for (int i = 0; i < count; i++) {
      Piece piece = ring.pieces().get(i);
      starts[i + 1] = starts[i] + piece.lengthPx();
      turns[i] = ring.turn(i);
      rounded[i] = turns[i] < -SHARP && !kept.test(piece.from());
    }
  }

  /**
   * The ring with its inward corners rounded.
   *
   * @param kept tells which corners stay as they are
   * @param radiusPx of the curve at a square corner
   */
  static Ring of(Ring ring, Predicate<XY> kept, double radiusPx) {
    return new RoundedCorners(ring, kept, radiusPx).rounded();
  }

  private Ring rounded() {
    int[] corners = IntStream.range(0, turns.length).filter(i -> rounded[i]).toArray();
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < corners.length; i++) {
      int corner = corners[i];
      int next = corners[(i + 1) % corners.length];
      if (corners.length == 1 || !isOneWith(corner, next)) {
        double from = starts[corner] + cutPx(corner, 1);
        double to = starts[next] - cutPx(next, -1);
        pieces.addAll(stretch(from, next > corner ? to : to + lengthPx()));
      }
    }
    return pieces.isEmpty() ? ring : new Ring(joined(pieces));
  }

  /**
   * Returns true if two corners are so near that one curve rounds both, as at the end of a slit.
   */
  private boolean isOneWith(int corner, int next) {
    for (int i = (corner + 1) % turns.length; i != next; i = (i + 1) % turns.length) {
      if (turns[i] > SHARP) {
        return false;
      }
    }
    return apartPx(corner, next) < ONE * radiusPx;
  }

  /** The length from one corner on to another. */
  private double apartPx(int corner, int next) {
    double apart = starts[next] - starts[corner];
    return apart < 0 ? apart + lengthPx() : apart;
  }

  private double lengthPx() {
    return starts[starts.length - 1];
  }

  /** The length to cut off on one side of a corner. */
  private double cutPx(int corner, int direction) {
    double wanted = radiusPx * StrictMath.tan(Math.abs(turns[corner]) / 2);
    double most = Math.min(Math.max(wanted, LEAST * radiusPx), MOST * radiusPx);
    return Math.min(most, roomPx(corner, direction));
  }

  /**
   * Nearly half the length to the next corner that is to be seen; nearly all of it if that one goes
   * inwards and stays as it is.
   */
  private double roomPx(int corner, int direction) {
    int count = turns.length;
    for (int i = 1; i < count; i++) {
      int next = Math.floorMod(corner + i * direction, count);
      double apart = direction > 0 ? apartPx(corner, next) : apartPx(next, corner);
      boolean seen = rounded[next] || apart > UNSEEN * radiusPx;
      if (Math.abs(turns[next]) > SHARP && seen) {
        return apart
            * (turns[next] < 0 && !rounded[next]
                ? NEARLY
                : NEARLY / 2); // something must be left between two
      }
    }
    return lengthPx() / 2;
  }

  /** The pieces between two lengths from the start. */
  private List<Piece> stretch(double from, double to) {
    List<Piece> pieces = new ArrayList<>();
    int count = ring.pieces().size();
    for (int i = 0; i < 2 * count; i++) {
      double start = starts[i % count] + (i < count ? 0 : lengthPx());
      double end = starts[i % count + 1] + (i < count ? 0 : lengthPx());
      if (end > from && start < to) {
        Piece piece = ring.pieces().get(i % count);
        Piece cut = end > to ? piece.until(piece.share(to - start)) : piece;
        pieces.add(start < from ? cut.since(cut.share(from - start)) : cut);
      }
    }
    return pieces;
  }

  /** Pieces with curves between those that do not meet. */
  private static List<Piece> joined(List<Piece> pieces) {
    List<Piece> joined = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      Piece piece = pieces.get(i);
      Piece next = pieces.get((i + 1) % pieces.size());
      joined.add(piece);
      if (!piece.to().equals(next.from())) {
        joined.add(between(piece, next));
      }
    }
    return joined;
  }

  private static Piece between(Piece before, Piece after) {
    XY from = before.to();
    XY to = after.from();
    XY out = before.endWay();
    XY in = after.way();
    double apart = from.distanceTo(to);
    double sine = out.x() * in.y() - out.y() * in.x();
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double ahead = Math.abs(sine) < 1e-6 ? -1 : (dx * in.y() - dy * in.x()) / sine;
    double behind = Math.abs(sine) < 1e-6 ? -1 : (dx * out.y() - dy * out.x()) / -sine;
    boolean meet = ahead > 0 && behind > 0;
    boolean turnsBack = out.x() * in.x() + out.y() * in.y() < 0;
    double open = turnsBack ? FULL * apart : apart / 3;
    double first = meet ? FULL * Math.min(ahead, 1.5 * apart) : open;
    double second = meet ? FULL * Math.min(behind, 1.5 * apart) : open;
    XY control1 = from.plus(out.x() * first, out.y() * first);
    XY control2 = to.plus(-in.x() * second, -in.y() * second);
    return new Piece(from, new Path.Curve(control1, control2, to), false);
  }
}
