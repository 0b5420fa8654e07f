package io.github.readfall.export.raster;

import io.github.readfall.lettering.style.Delivery;
import io.github.readfall.plan.Obstacle;
import io.github.readfall.plan.StripCuts;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The cuts of a strip for a delivery. Lengths are pixels of the slices.
 *
 * @param widthPx of the slices
 * @param heightPx of all of them together
 * @param ends of the slices, rising, with the last one's
 * @param rows that tell what a cut at each row would cross
 */
record SlicePlan(int widthPx, int heightPx, List<Integer> ends, CutRows rows) {

  /** A slice is in memory whole. House default. */
  private static final int MOST_PX = 32_000_000;

  /** A JPEG tells its height in two bytes (ISO/IEC 10918-1, B.2.2). */
  private static final int TALLEST_PX = 65_500;

  SlicePlan {
    ends = List.copyOf(ends);
  }

  static SlicePlan of(StripPicture strip, Delivery delivery) {
    double scale = (double) delivery.widthPx() / strip.widthPx();
    int heightPx = Math.max(1, (int) Math.round(strip.heightPx() * scale));
    int mostPx = Math.max(1, Math.min(TALLEST_PX, MOST_PX / delivery.widthPx()));
    Delivery limited = delivery.withSlicesUpTo(mostPx);
    List<Obstacle> obstacles = Obstacle.of(strip.galley());
    CutRows rows = CutRows.of(obstacles, scale, heightPx);
    List<Integer> ends = new ArrayList<>();
    for (double cut : StripCuts.slices(strip.widthPx(), strip.heightPx(), limited, obstacles)) {
      int row = rows.nearest(cut * scale);
      if (row > 0 && row < heightPx && (ends.isEmpty() || row > ends.get(ends.size() - 1))) {
        ends.add(row);
      }
    }
    ends.add(heightPx);
    return new SlicePlan(delivery.widthPx(), heightPx, ends, rows);
  }

  /** A sentence for each cut that crosses balloons because there is no other place for it. */
  List<String> notes(Galley galley) {
    List<String> notes = new ArrayList<>();
    for (int i = 0; i + 1 < ends.size(); i++) {
      if (rows.isThroughBalloon(ends.get(i))) {
        notes.add(
            "Slice "
                + (i + 1)
                + " ends within "
                + through(ends.get(i), galley)
                + ", which is taller than a slice may be"
                + (rows.isThroughLetters(ends.get(i)) ? ", and in the midst of its words" : "")
                + ": allow taller slices, or make the balloon lower.");
      }
    }
    return notes;
  }

  private String through(int row, Galley galley) {
    double atPx = row * galley.widthPx() / widthPx;
    String named =
        galley.balloons().stream()
            .filter(balloon -> balloon.reach().y() < atPx && atPx < balloon.reach().bottom())
            .map(PlacedBalloon::id)
            .collect(Collectors.joining(", "));
    return named.isEmpty() ? "a balloon" : "balloon " + named;
  }
}
