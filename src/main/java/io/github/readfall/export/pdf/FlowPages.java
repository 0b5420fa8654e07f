package io.github.readfall.export.pdf;

import io.github.readfall.base.geom.XY;
import io.github.readfall.type.text.TextLine;
import java.util.List;

/**
 * Pages of columns alone, for everything without a place beside the strip.
 *
 * @param columnPt width of a column
 */
record FlowPages(Book book, double columnPt) {

  /** Distance between the head of a page and its columns, in points. */
  private static final double ABOVE = 7;

  /**
   * Adds as many pages as needed.
   *
   * @param head of each page
   */
  void add(TextLine head, List<Entry> entries) {
    List<Entry> rest = entries;
    while (!rest.isEmpty()) {
      Sheet sheet = book.add();
      XY at = new XY(Paper.SIDE, Paper.TOP - ABOVE);
      sheet.decoration(() -> sheet.painter().text(head, at, TextStyle.QUIET));
      for (int i = 0; i < columns() && !rest.isEmpty(); i++) {
        Column column = Column.stacked(rest, Paper.TOP, Paper.BOTTOM);
        double x = Paper.SIDE + Paper.GAP + i * (columnPt + Paper.GAP);
        column.placed().forEach(one -> one.entry().writeOn(sheet, new XY(x, one.topPt())));
        rest = column.rest();
      }
    }
  }

  /** The number of columns. The first is indented by a gap, for the keys beside it. */
  private int columns() {
    return Math.max(1, (int) ((Paper.WIDTH - 2 * Paper.SIDE) / (columnPt + Paper.GAP)));
  }
}
