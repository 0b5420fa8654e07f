package io.github.readfall.art.panels;

/**
 * One edge of a panel as a straight line: at a distance {@code along} from its beginning it is at
 * {@code at + slope * along}.
 *
 * @param at place of its beginning
 * @param slope rise for each unit along
 * @param share of the edge that is on the line, 0 to 1
 */
record Edge(double at, double slope, double share) {

  double at(double along) {
    return at + slope * along;
  }

  /** The line between this one and another. */
  Edge halfWayTo(Edge other) {
    return new Edge((at + other.at) / 2, (slope + other.slope) / 2, Math.min(share, other.share));
  }
}
