package io.github.readfall.geom;

import java.awt.geom.PathIterator;
import org.locationtech.jts.awt.ShapeReader;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.distance.DistanceOp;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * What an outline covers, as a polygon that stays within {@value #FLATNESS_PX} px of it: for
 * distances and overlaps that a box would get wrong.
 */
public final class Region {

  /** How far the polygon may stray from the curve: less than a reader or a printer can show. */
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

  /** What a closed outline covers. */
  public static Region of(Path outline) {
    // not with the shape itself, which would be turned upside down
    PathIterator flat = outline.toShape().getPathIterator(null, FLATNESS_PX);
    Geometry read = new ShapeReader(FACTORY).read(flat);
    return new Region(read.isValid() ? read : GeometryFixer.fix(read));
  }

  /** What a box covers. */
  public static Region of(Box box) {
    return new Region(
        FACTORY.toGeometry(new Envelope(box.x(), box.right(), box.y(), box.bottom())));
  }

  /** A straight line, which covers nothing. */
  public static Region line(XY from, XY to) {
    Coordinate[] ends = {new Coordinate(from.x(), from.y()), new Coordinate(to.x(), to.y())};
    return new Region(FACTORY.createLineString(ends));
  }

  /** The line round a box, which covers nothing. */
  public static Region edgeOf(Box box) {
    return new Region(of(box).geometry.getBoundary());
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

  /** The least distance to another region, in strip pixels; 0 where they touch or overlap. */
  public double distanceTo(Region other) {
    return DistanceOp.distance(geometry, other.geometry);
  }

  /** Whether any point belongs to both; a touch is enough. */
  public boolean meets(Region other) {
    return bounds.meets(other.bounds) && geometry.intersects(other.geometry);
  }

  /** Whether every point of the other is one of this. */
  public boolean covers(Region other) {
    return geometry.covers(other.geometry);
  }

  /** What belongs to both. */
  public Region within(Region other) {
    return new Region(OverlayNGRobust.overlay(geometry, other.geometry, OverlayNG.INTERSECTION));
  }

  /** What belongs to this but not to the other. */
  public Region without(Region other) {
    return new Region(OverlayNGRobust.overlay(geometry, other.geometry, OverlayNG.DIFFERENCE));
  }

  /** What belongs to either. */
  public Region with(Region other) {
    return new Region(OverlayNGRobust.overlay(geometry, other.geometry, OverlayNG.UNION));
  }
}
