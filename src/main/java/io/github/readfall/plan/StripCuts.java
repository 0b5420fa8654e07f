package io.github.readfall.plan;

import io.github.readfall.lettering.style.Delivery;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.strip.Cuts;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.galley.Galley;
import java.util.List;

/** The cuts of a strip: into canvas pages, and into the publisher's slices. */
public final class StripCuts {

  private StripCuts() {}

  /** Pages as the layout has them, else planned; slices always planned. */
  public static Cuts of(Layout layout, List<Obstacle> obstacles, HouseStyle style) {
    double heightPx = layout.heightPx();
    List<Double> pages =
        layout
            .cuts()
            .orElseGet(() -> CutPlanner.plan(heightPx, style.strip().pageHeightPx(), obstacles));
    List<Double> slices = slices(layout.widthPx(), heightPx, style.delivery(), obstacles);
    return new Cuts(pages, layout.cuts().isPresent(), slices);
  }

  /** The cuts of a strip whose balloons have places. */
  public static Cuts of(Layout layout, Galley galley) {
    return of(layout, Obstacle.of(galley), galley.style());
  }

  /**
   * The ends of a strip's slices for a delivery, from the top, without the strip's own end.
   *
   * @param widthPx of the strip
   * @param heightPx of the strip
   */
  public static List<Double> slices(
      double widthPx, double heightPx, Delivery delivery, List<Obstacle> obstacles) {
    return CutPlanner.plan(heightPx, sliceHeightPx(widthPx, delivery), obstacles);
  }

  /**
   * The tallest piece of the strip that makes one slice: a pixel of the slice less, because both
   * its ends are rounded when the strip is scaled.
   */
  static double sliceHeightPx(double stripWidthPx, Delivery delivery) {
    double stripPxPerPx = stripWidthPx / delivery.widthPx();
    return Math.max(1, Math.max(1, delivery.maxSliceHeightPx() - 1) * stripPxPerPx);
  }
}
