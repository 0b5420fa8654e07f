package io.github.readfall.base.geom;

/**
 * A point on the strip.
 *
 * @param x strip pixels from the left
 * @param y strip pixels from the top, downwards
 */
public record XY(double x, double y) {

  public XY plus(double dx, double dy) {
    return new XY(x + dx, y + dy);
  }

  /** The point at a share of the way to another: 0 here, 1 there. */
  public XY towards(XY other, double share) {
    return new XY(x + (other.x - x) * share, y + (other.y - y) * share);
  }

  /** Straight distance, in strip pixels. */
  public double distanceTo(XY other) {
    double dx = other.x - x;
    double dy = other.y - y;
    return Math.sqrt(dx * dx + dy * dy);
  }
}
