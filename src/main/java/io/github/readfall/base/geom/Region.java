package io.github.readfall.base.geom;

import java.awt.geom.PathIterator;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.locationtech.jts.awt.ShapeReader;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.distance.DistanceOp;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * The area of an outline, as a polygon that stays within {@value #FLATNESS_PX} px of it: for
 * distances and overlaps that a box would get wrong.
 */
public final class Region {

  /** Greatest distance of the polygon from the curve: less than a reader or a printer can show. */
  static final double FLATNESS_PX = 0.05;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private final Geometry geometry;
  private final Box bounds;

  private Region(Geometry geometry) {
    this.geometry = geometry;
    Envelope e = geometry.getEnvelopeInternal();
    this.bounds =
        e.isNull()
            ? new Box(0, 0, 0, 0)
            : new Box(e.getMinX(), e.getMinY(), e.getWidth(), e.getHeight());
  }

  /** The area of a closed outline. */
  public static Region of(Path outline) {
    // not with the shape itself, which would be turned upside down
    PathIterator flat = outline.toShape().getPathIterator(null, FLATNESS_PX);
    Geometry read = new ShapeReader(FACTORY).read(flat);
    return new Region(read.isValid() ? read : GeometryFixer.fix(read));
  }

  /** The area of a box. */
  public static Region of(Box box) {
    return new Region(
        FACTORY.toGeometry(new Envelope(box.x(), box.right(), box.y(), box.bottom())));
  }

  /** A straight line, which covers nothing. */
  public static Region line(XY from, XY to) {
    Coordinate[] ends = {new Coordinate(from.x(), from.y()), new Coordinate(to.x(), to.y())};
    return new Region(FACTORY.createLineString(ends));
  }

  /** The line round this region, which covers nothing. */
  public Region edge() {
    return new Region(geometry.getBoundary());
  }

  public Box bounds() {
    return bounds;
  }

  public boolean isEmpty() {
    return geometry.isEmpty();
  }

  public double areaPx2() {
    return geometry.getArea();
  }

  /** The length of a line; of a region with an area, the length of its edge. */
  public double lengthPx() {
    return geometry.getLength();
  }

  public Region movedBy(double dx, double dy) {
    return new Region(AffineTransformation.translationInstance(dx, dy).transform(geometry));
  }

  /** Its length in the direction from one point to another, in strip pixels. */
  public double extentPx(XY from, XY to) {
    double length = from.distanceTo(to);
    if (isEmpty() || length == 0) {
      return 0;
    }
    double dx = (to.x() - from.x()) / length;
    double dy = (to.y() - from.y()) / length;
    DoubleSummaryStatistics along =
        Arrays.stream(geometry.getCoordinates())
            .mapToDouble(at -> at.x * dx + at.y * dy)
            .summaryStatistics();
    return along.getMax() - along.getMin();
  }

  /** The least distance to another region, in strip pixels; 0 if they touch or overlap. */
  public double distanceTo(Region other) {
    return isEmpty() || other.isEmpty() || meets(other)
        ? 0
        : IndexedFacetDistance.distance(geometry, other.geometry);
  }

  /**
   * The points of two regions that are nearest to each other, one of this and one of the other; if
   * they overlap, one of both. Neither may be empty.
   */
  public List<XY> nearest(Region other) {
    Coordinate[] points =
        meets(other)
            ? DistanceOp.nearestPoints(geometry, other.geometry)
            : IndexedFacetDistance.nearestPoints(geometry, other.geometry);
    return Arrays.stream(points).map(at -> new XY(at.x, at.y)).toList();
  }

  /**
   * The shortest shift that takes this region off another, the hollows of both counted as filled;
   * no shift if they do not overlap, or if either covers nothing.
   */
  public XY shiftOff(Region other) {
    if (!bounds.meets(other.bounds)) {
      return new XY(0, 0);
    }
    return new ConvexOverlap(hull(), other.hull()).shiftOff();
  }

  /** The corners of the smallest convex polygon round it, without the last, which is the first. */
  private List<XY> hull() {
    Coordinate[] ring = geometry.convexHull().getCoordinates();
    return Arrays.stream(ring)
        .limit(Math.max(0, ring.length - 1))
        .map(at -> new XY(at.x, at.y))
        .toList();
  }

  /** Returns true if any point belongs to both; a touch is enough. */
  public boolean meets(Region other) {
    return bounds.meets(other.bounds) && geometry.intersects(other.geometry);
  }

  /** Returns true if every point of the other is one of this. */
  public boolean covers(Region other) {
    return geometry.covers(other.geometry);
  }

  /** The area that belongs to both. */
  public Region intersection(Region other) {
    return new Region(OverlayNGRobust.overlay(geometry, other.geometry, OverlayNG.INTERSECTION));
  }

  /** The area that belongs to this but not to the other. */
  public Region minus(Region other) {
    return new Region(OverlayNGRobust.overlay(geometry, other.geometry, OverlayNG.DIFFERENCE));
  }

  /** The area that belongs to either. */
  public Region union(Region other) {
    return new Region(OverlayNGRobust.overlay(geometry, other.geometry, OverlayNG.UNION));
  }
}
