package io.github.readfall.type.text;

import java.util.List;

/**
 * One line, shaped.
 *
 * @param text as lettered, in logical order, without the space it was broken at
 * @param advancePx the pen's way from end to end, kerning included, letterspacing not
 * @param closedUpPx how much shorter than that it is, where full-width marks gave up their empty
 *     half
 * @param box what it takes up
 * @param runs from left to right
 */
public record TextLine(
    String text, double advancePx, double closedUpPx, LineBox box, List<PlacedRun> runs) {
  public TextLine {
    runs = List.copyOf(runs);
  }
}
