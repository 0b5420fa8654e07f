package io.github.readfall.art.panels;

import java.util.stream.IntStream;

/** The depth of one side of a piece, all along it, and the line through that; in cells. */
final class Flank {

  /** Wobble of hand-drawn lines, in cells. */
  private static final double SAME_LINE_CELLS = 1;

  private final int[] places;
  private final Edge line;

  private Flank(int[] places, Edge line) {
    this.places = places;
    this.line = line;
  }

  static Flank of(int[] places) {
    return new Flank(places, EdgeFit.of(places, SAME_LINE_CELLS));
  }

  boolean isSure() {
    return line.share() >= PanelSides.GUESSED;
  }

  /** Its line; if it is not straight, the line where the sides that it joins end. */
  Edge edge(int corner) {
    return isSure() ? line : new Edge(corner, 0, line.share());
  }

  /** The first place along it that is on its line. */
  int firstOnLine() {
    return IntStream.range(0, places.length).filter(this::isOnLine).findFirst().orElse(0);
  }

  /** The same from its other end. */
  int lastOnLine() {
    return IntStream.range(0, places.length)
        .filter(i -> isOnLine(places.length - 1 - i))
        .findFirst()
        .orElse(0);
  }

  private boolean isOnLine(int i) {
    return places[i] != EdgeFit.NOWHERE && Math.abs(places[i] - line.at(i)) <= SAME_LINE_CELLS;
  }
}
