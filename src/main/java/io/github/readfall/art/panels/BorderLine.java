package io.github.readfall.art.panels;

/**
 * One side of a panel on the strip, in strip pixels.
 *
 * @param from where it begins: an x for sides that run along the rows, else a y
 * @param end where it ends; greater than {@code from}
 * @param line its place across, by the distance from its beginning
 */
record BorderLine(Side side, int from, int end, Edge line) {

  int length() {
    return end - from;
  }

  /** The outermost point of the line. */
  double outermost() {
    double here = line.at();
    double there = line.at(length());
    return side.inward() > 0 ? Math.min(here, there) : Math.max(here, there);
  }

  /** The same side with another line. */
  BorderLine on(Edge other) {
    return new BorderLine(side, from, end, other);
  }
}
