package io.github.readfall.pdf;

import io.github.readfall.geom.XY;
import java.util.List;

/**
 * Pages of columns alone, for what has no place beside the strip.
 *
 * @param columnPt width of a column
 */
record FlowPages(Book book, double columnPt) {

  /** As many pages as it takes. */
  void add(List<Entry> entries) {
    List<Entry> rest = entries;
    while (!rest.isEmpty()) {
      Sheet sheet = book.add();
      for (int i = 0; i < columns() && !rest.isEmpty(); i++) {
        Column column = Column.stacked(rest, Paper.TOP, Paper.BOTTOM);
        double x = Paper.SIDE + Paper.GAP + i * (columnPt + Paper.GAP);
        column.placed().forEach(one -> one.entry().writeOn(sheet, new XY(x, one.topPt())));
        rest = column.rest();
      }
    }
  }

  /** The first is indented by a gap, for keys stand beside it. */
  private int columns() {
    return Math.max(1, (int) ((Paper.WIDTH - 2 * Paper.SIDE) / (columnPt + Paper.GAP)));
  }
}
