package io.github.readfall.strip;

import java.util.ArrayList;
import java.util.List;

/**
 * Cues and panels that are gone from the script, kept in case they come back. They are neither
 * drawn nor judged.
 *
 * @param panels with the numbers they had
 * @param mouths in those panels
 * @param balloons with the cues they had, those gone last at the end
 */
public record Parked(List<PanelBox> panels, List<Mouth> mouths, List<LaidBalloon> balloons) {

  public static final Parked NONE = new Parked(List.of(), List.of(), List.of());

  public Parked {
    panels = List.copyOf(panels);
    mouths = List.copyOf(mouths);
    balloons = List.copyOf(balloons);
  }

  /** These and those parked later. */
  public Parked and(Parked later) {
    return new Parked(
        joined(panels, later.panels),
        joined(mouths, later.mouths),
        joined(balloons, later.balloons));
  }

  boolean isEmpty() {
    return panels.isEmpty() && mouths.isEmpty() && balloons.isEmpty();
  }

  private static <T> List<T> joined(List<T> first, List<T> second) {
    List<T> all = new ArrayList<>(first);
    all.addAll(second);
    return all;
  }
}
