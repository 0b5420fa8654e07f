package io.github.readfall.strip;

import io.github.readfall.geom.Box;
import java.util.List;

/** Says which panels of layout.json lie beyond the strip. */
final class Extents {

  private final Box strip;
  private final LayoutFaults faults;

  Extents(double widthPx, double heightPx, LayoutFaults faults) {
    this.strip = new Box(0, 0, widthPx, heightPx);
    this.faults = faults;
  }

  void judge(List<Written<PanelBox>> panels) {
    for (Written<PanelBox> panel : panels) {
      if (!strip.meets(panel.part().box())) {
        faults.warning(
            "outside",
            panel.offset(),
            "Panel " + panel.part().panel() + " lies wholly outside the strip.",
            "Mend its box, [left, top, width, height], or make the strip larger.");
      }
    }
  }
}
