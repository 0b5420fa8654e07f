package io.github.readfall.strip;

import java.util.List;
import java.util.Optional;

/**
 * A strip as it is laid out so far: what layout.json says. Lengths are strip pixels.
 *
 * @param widthPx of the strip; positive
 * @param heightPx of the strip; positive
 * @param panels in script order, each number once
 * @param keepClear what nothing may cover
 * @param mouths where speakers' mouths are known
 * @param balloons in the order of the file; each cue once
 * @param cuts where canvas pages end, from the top, in rising order; empty where they are left to
 *     be planned
 * @param extra keys that this version does not know
 */
public record Layout(
    double widthPx,
    double heightPx,
    List<PanelBox> panels,
    List<KeepClear> keepClear,
    List<Mouth> mouths,
    List<LaidBalloon> balloons,
    Optional<List<Double>> cuts,
    Extra extra) {

  public Layout {
    if (!(widthPx > 0) || !(heightPx > 0)) {
      throw new IllegalArgumentException("not a strip: " + widthPx + " x " + heightPx);
    }
    panels = List.copyOf(panels);
    keepClear = List.copyOf(keepClear);
    mouths = List.copyOf(mouths);
    balloons = List.copyOf(balloons);
    cuts = cuts.map(List::copyOf);
  }

  /** A strip with panels and nothing else. */
  public static Layout of(double widthPx, double heightPx, List<PanelBox> panels) {
    return new Layout(
        widthPx, heightPx, panels, List.of(), List.of(), List.of(), Optional.empty(), Extra.NONE);
  }

  /** Where a panel is, if it has a place. */
  public Optional<PanelBox> panel(int number) {
    return panels.stream().filter(panel -> panel.panel() == number).findFirst();
  }

  /** The same strip with other balloons. */
  public Layout withBalloons(List<LaidBalloon> others) {
    return new Layout(widthPx, heightPx, panels, keepClear, mouths, others, cuts, extra);
  }
}
