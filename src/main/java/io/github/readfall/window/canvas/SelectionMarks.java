package io.github.readfall.window.canvas;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import java.util.List;
import java.util.Optional;

/**
 * What is shown of things that are worked on, in strip pixels.
 *
 * @param frames round what is chosen
 * @param grips small squares to pull by
 * @param bars wide grips, that open or close what lies above
 * @param points where a tail ends or a mouth is
 * @param band a box that is being drawn
 */
public record SelectionMarks(
    List<Box> frames, List<XY> grips, List<XY> bars, List<XY> points, Optional<Box> band) {

  /** Nothing. */
  public static final SelectionMarks NOTHING =
      new SelectionMarks(List.of(), List.of(), List.of(), List.of(), Optional.empty());

  public SelectionMarks {
    frames = List.copyOf(frames);
    grips = List.copyOf(grips);
    bars = List.copyOf(bars);
    points = List.copyOf(points);
  }
}
