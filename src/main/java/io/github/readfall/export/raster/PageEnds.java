package io.github.readfall.export.raster;

import java.util.ArrayList;
import java.util.List;

/** Finds the ends of the canvas pages of a strip. */
final class PageEnds {

  private PageEnds() {}

  /**
   * The ends in whole rows, rising, with the strip's end: at the cuts of the layout or the plan,
   * and below the strip, if art continues, after every full page.
   */
  static List<Integer> of(StripPicture strip) {
    List<Integer> ends = new ArrayList<>();
    int before = 0;
    for (double cut : strip.galley().cuts().pages()) {
      int row = (int) Math.rint(cut);
      if (row > before && row < strip.heightPx()) {
        ends.add(row);
        before = row;
      }
    }
    int pagePx = strip.galley().style().strip().pageHeightPx();
    int stripPx = (int) Math.ceil(strip.galley().heightPx());
    while (strip.heightPx() > stripPx && strip.heightPx() - before > pagePx) {
      before += pagePx;
      ends.add(before);
    }
    ends.add(strip.heightPx());
    return List.copyOf(ends);
  }
}
