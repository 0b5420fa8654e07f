package io.github.readfall.export.pdf;

import io.github.readfall.base.geom.XY;
import java.util.List;

/**
 * Rows that belong together in a column.
 *
 * @param wantedPt wanted top on the page
 * @param rows from the top
 * @param key that joins it to a place on the strip
 */
record Entry(double wantedPt, List<ColumnRow> rows, FindingKey key) {

  /** Between two. House default, no source. */
  static final double APART = 5;

  Entry {
    rows = List.copyOf(rows);
  }

  double heightPt() {
    return rows.stream().mapToDouble(ColumnRow::heightPt).sum();
  }

  /** The first so many rows. */
  Entry first(int count) {
    return new Entry(wantedPt, rows.subList(0, count), key);
  }

  /** All but the first so many rows. */
  Entry after(int count) {
    return new Entry(wantedPt, rows.subList(count, rows.size()), count > 0 ? FindingKey.NONE : key);
  }

  /** The number of its rows that fit a height. */
  int rowsIn(double roomPt) {
    int count = 0;
    double used = 0;
    while (count < rows.size() && used + rows.get(count).heightPt() <= roomPt) {
      used += rows.get(count).heightPt();
      count++;
    }
    return count;
  }

  /** Writes it with its upper left corner at a point. */
  void writeOn(Sheet sheet, XY at) {
    key.writeOn(sheet, at);
    double y = at.y();
    for (ColumnRow row : rows) {
      row.writeOn(sheet, new XY(at.x(), y));
      y += row.heightPt();
    }
  }
}
