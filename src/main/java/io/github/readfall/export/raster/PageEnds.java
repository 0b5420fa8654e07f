package io.github.readfall.export.raster;

import java.util.ArrayList;
import java.util.List;

/** Where the canvas pages of a strip end. */
final class PageEnds {

  private PageEnds() {}

  /**
   * In whole rows, rising, the strip's end too: where the layout or the plan cuts it, and below the
   * strip, where art goes on, after every full page.
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
