package io.github.readfall.export.pdf;

import java.util.ArrayList;
import java.util.List;

/**
 * A column of a page with its entries.
 *
 * @param placed from the top
 * @param rest entries without room, in order
 */
record Column(List<Placed> placed, List<Entry> rest) {

  /**
   * An entry in its place.
   *
   * @param topPt on the page
   */
  record Placed(Entry entry, double topPt) {}

  Column {
    placed = List.copyOf(placed);
    rest = List.copyOf(rest);
  }

  /**
   * Puts entries below each other, each at its wanted place or as near as the others allow; if
   * there is not room for all, each right below the other, and those left over are the rest.
   */
  static Column of(List<Entry> entries, double topPt, double bottomPt) {
    double all = -Entry.APART;
    for (Entry entry : entries) {
      all += entry.heightPt() + Entry.APART;
    }
    return all <= bottomPt - topPt
        ? new Column(spread(entries, topPt, bottomPt), List.of())
        : stacked(entries, topPt, bottomPt);
  }

  private static List<Placed> spread(List<Entry> entries, double topPt, double bottomPt) {
    double[] wanted = entries.stream().mapToDouble(Entry::wantedPt).toArray();
    double[] heights = entries.stream().mapToDouble(Entry::heightPt).toArray();
    double[] tops = NearestStacking.tops(wanted, heights, Entry.APART, topPt, bottomPt);
    List<Placed> placed = new ArrayList<>();
    for (int i = 0; i < tops.length; i++) {
      placed.add(new Placed(entries.get(i), tops[i]));
    }
    return placed;
  }

  /** Puts entries right below each other. */
  static Column stacked(List<Entry> entries, double topPt, double bottomPt) {
    List<Placed> placed = new ArrayList<>();
    List<Entry> rest = new ArrayList<>();
    double y = topPt;
    for (Entry entry : entries) {
      int count = rest.isEmpty() ? entry.rowsIn(bottomPt - y) : 0;
      if (count > 0) {
        placed.add(new Placed(entry.first(count), y));
        y += entry.first(count).heightPt() + Entry.APART;
      }
      if (count < entry.rows().size()) {
        rest.add(entry.after(count));
      }
    }
    return new Column(placed, rest);
  }
}
