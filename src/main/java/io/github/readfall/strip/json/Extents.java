package io.github.readfall.strip.json;

import io.github.readfall.base.geom.Box;
import io.github.readfall.strip.PanelBox;
import java.util.List;

/** Finds panels of layout.json that are outside the strip. */
final class Extents {

  private final Box strip;
  private final LayoutFindings faults;

  Extents(double widthPx, double heightPx, LayoutFindings faults) {
    this.strip = new Box(0, 0, widthPx, heightPx);
    this.faults = faults;
  }

  void judge(List<LocatedPart<PanelBox>> panels) {
    for (LocatedPart<PanelBox> panel : panels) {
      if (!strip.meets(panel.part().box())) {
        faults.warning(
            "outside",
            panel.offset(),
            "Panel " + panel.part().panel() + " is wholly outside the strip.",
            "Correct its box, [left, top, width, height], or make the strip larger.");
      }
    }
  }
}
