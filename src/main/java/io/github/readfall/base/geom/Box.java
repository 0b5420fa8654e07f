package io.github.readfall.base.geom;

/**
 * An upright rectangle.
 *
 * @param x left edge
 * @param y top edge
 * @param width not negative
 * @param height not negative
 */
public record Box(double x, double y, double width, double height) {

  public Box {
    if (!(width >= 0) || !(height >= 0)) {
      throw new IllegalArgumentException("not a box: " + width + " x " + height);
    }
  }

  /** The box between two opposite edges. */
  public static Box ofEdges(double left, double top, double right, double bottom) {
    return new Box(left, top, right - left, bottom - top);
  }

  public double right() {
    return x + width;
  }

  public double bottom() {
    return y + height;
  }

  public XY centre() {
    return new XY(x + width / 2, y + height / 2);
  }

  /** A box of another's size about the same middle. */
  public Box resized(Box size) {
    return new Box(
        x + (width - size.width) / 2, y + (height - size.height) / 2, size.width, size.height);
  }

  public Box movedBy(double dx, double dy) {
    return new Box(x + dx, y + dy, width, height);
  }

  /** This box grown by the same length on every side. */
  public Box grownBy(double length) {
    return new Box(x - length, y - length, width + 2 * length, height + 2 * length);
  }

  /** Returns true if any point belongs to both; a touch is enough. */
  public boolean meets(Box other) {
    return x <= other.right() && other.x <= right() && y <= other.bottom() && other.y <= bottom();
  }

  /** Returns true if the other is inside this one, edges included. */
  public boolean covers(Box other) {
    return x <= other.x && y <= other.y && right() >= other.right() && bottom() >= other.bottom();
  }

  /** Returns true if a point is inside this box, edges included. */
  public boolean covers(XY point) {
    return x <= point.x() && point.x() <= right() && y <= point.y() && point.y() <= bottom();
  }

  /** The least distance to another box, in strip pixels; 0 if they touch or overlap. */
  public double distanceTo(Box other) {
    double dx = Math.max(0, Math.max(other.x - right(), x - other.right()));
    double dy = Math.max(0, Math.max(other.y - bottom(), y - other.bottom()));
    return Math.sqrt(dx * dx + dy * dy);
  }

  /** The smallest box round both. */
  public Box union(Box other) {
    return ofEdges(
        Math.min(x, other.x),
        Math.min(y, other.y),
        Math.max(right(), other.right()),
        Math.max(bottom(), other.bottom()));
  }
}
