package io.github.readfall.window.canvas;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import java.util.List;
import java.util.Optional;

/**
 * The marks of selected elements, in strip pixels.
 *
 * @param frames around what is selected
 * @param grips small squares to drag
 * @param bars wide grips that open or close the gutter above
 * @param points tips of tails and positions of mouths
 * @param band a box that is being drawn
 */
public record SelectionMarks(
    List<Box> frames, List<XY> grips, List<XY> bars, List<XY> points, Optional<Box> band) {

  /** No marks. */
  public static final SelectionMarks NOTHING =
      new SelectionMarks(List.of(), List.of(), List.of(), List.of(), Optional.empty());

  public SelectionMarks {
    frames = List.copyOf(frames);
    grips = List.copyOf(grips);
    bars = List.copyOf(bars);
    points = List.copyOf(points);
  }
}
