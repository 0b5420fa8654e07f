package io.github.readfall.type.text;

import java.util.List;

/**
 * One line, shaped.
 *
 * @param text as lettered, in logical order, without the space it was broken at
 * @param advancePx from end to end, with kerning, without letterspacing
 * @param closedUpPx difference by which it is shorter than that, if full-width marks gave up their
 *     empty half
 * @param box of the line
 * @param runs from left to right
 */
public record TextLine(
    String text, double advancePx, double closedUpPx, LineBox box, List<PlacedRun> runs) {
  public TextLine {
    runs = List.copyOf(runs);
  }
}
