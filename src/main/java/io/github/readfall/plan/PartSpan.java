package io.github.readfall.plan;

import io.github.readfall.strip.PanelBox;
import java.util.ArrayList;
import java.util.List;

/**
 * A part of a split, on the strip that is split.
 *
 * @param number of the part, from 1
 * @param topPx where it begins, in strip pixels: in the middle of the gutter, or at the strip's top
 * @param bottomPx where the next begins, or the strip ends
 * @param screens of the narrowest phone that it has as an episode of its own
 * @param part its figures
 */
public record PartSpan(int number, double topPx, double bottomPx, double screens, Split.Part part) {

  /** The parts of a split of this plan's strip, from the top. */
  public static List<PartSpan> of(EpisodePlan plan, Split split) {
    List<PartSpan> spans = new ArrayList<>();
    for (int i = 0; i < split.parts().size(); i++) {
      Split.Part part = split.parts().get(i);
      boolean isLast = i + 1 == split.parts().size();
      double top = i == 0 ? 0 : edgePx(plan, part.firstPanel());
      double bottom =
          isLast ? plan.heightPx() : edgePx(plan, split.parts().get(i + 1).firstPanel());
      double screens = part.heightPx() / plan.screens().screenPx();
      spans.add(new PartSpan(i + 1, top, bottom, screens, part));
    }
    return List.copyOf(spans);
  }

  /** The middle between all panels before a panel, and that panel with those after it. */
  private static double edgePx(EpisodePlan plan, int firstPanel) {
    double above = 0;
    double below = plan.heightPx();
    for (PanelBox panel : plan.layout().panels()) {
      if (panel.panel() < firstPanel) {
        above = Math.max(above, panel.box().bottom());
      } else {
        below = Math.min(below, panel.box().y());
      }
    }
    return (above + below) / 2;
  }
}
