package io.github.readfall.export.phone;

import io.github.readfall.base.geom.Box;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A piece of the strip that a browser draws by itself, so that invisible pieces cost nothing.
 *
 * @param topPx in strip pixels, a multiple of {@link #STEP_PX}
 * @param heightPx to where the next begins
 * @param overlapPx length that continues under the next, so that no light shows between them
 */
record StripPiece(int topPx, int heightPx, int overlapPx) {

  /** Heights at which a piece may begin: whole pixels of art that was halved up to thrice. */
  static final int STEP_PX = 8;

  /** House defaults, no source: at 360 px wide an eighth of a phone's longest texture. */
  private static final int WANTED_PX = 4000;

  private static final int SHORTEST_PX = 2400;
  private static final int LONGEST_PX = 5600;

  /** Its height with the part under the next. */
  int drawnPx() {
    return heightPx + overlapPx;
  }

  int bottomPx() {
    return topPx + drawnPx();
  }

  /**
   * The pieces of a strip.
   *
   * @param heightPx of the strip
   * @param spared boxes in which no piece should end, if there is room elsewhere
   */
  static List<StripPiece> of(int heightPx, List<Box> spared) {
    List<StripPiece> pieces = new ArrayList<>();
    int top = 0;
    while (heightPx - top > LONGEST_PX) {
      int next = next(top, spared);
      pieces.add(new StripPiece(top, next - top, STEP_PX));
      top = next;
    }
    if (heightPx > top) {
      pieces.add(new StripPiece(top, heightPx - top, 0));
    }
    return pieces;
  }

  private static int next(int top, List<Box> spared) {
    int wanted = top + WANTED_PX;
    return IntStream.rangeClosed((top + SHORTEST_PX) / STEP_PX, (top + LONGEST_PX) / STEP_PX)
        .map(step -> step * STEP_PX)
        .boxed()
        .filter(y -> spared.stream().noneMatch(box -> box.y() < y + STEP_PX && box.bottom() > y))
        .min(Comparator.comparingInt(y -> Math.abs(y - wanted)))
        .orElse(wanted);
  }
}
