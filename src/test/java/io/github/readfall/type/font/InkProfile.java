package io.github.readfall.type.font;

import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;

/**
 * How wide a letter's ink is at two heights, in design units.
 *
 * @param widthNearTop the widest within the top eighth
 * @param widthInMiddle half way up
 */
record InkProfile(double widthNearTop, double widthInMiddle) {

  private static final int SLICES = 8;

  static InkProfile of(Face face, String letter) {
    Shape outline = face.outline(face.shape(letter).glyph(0), 0);
    Rectangle2D bounds = outline.getBounds2D();
    double slice = bounds.getHeight() / SLICES;
    return new InkProfile(
        width(outline, bounds.getMinY(), slice),
        width(outline, bounds.getCenterY() - slice / SLICES, 2 * slice / SLICES));
  }

  private static double width(Shape outline, double top, double height) {
    Area slice = new Area(outline);
    Rectangle2D all = outline.getBounds2D();
    slice.intersect(new Area(new Rectangle2D.Double(all.getX(), top, all.getWidth(), height)));
    return slice.getBounds2D().getWidth();
  }
}
