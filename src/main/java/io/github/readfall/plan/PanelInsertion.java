package io.github.readfall.plan;

import io.github.readfall.base.geom.Box;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.Opening;
import io.github.readfall.strip.PanelBox;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Makes room in a laid-out strip for panels that are only in the script. */
public final class PanelInsertion {

  private PanelInsertion() {}

  /**
   * The layout with a box for every panel of the script. A new panel is as large as it would be
   * planned, below all panels before it; everything below it moves down.
   *
   * @param set the script that the layout's panels are numbered by
   */
  public static Layout complete(SetEpisode set, Layout layout) {
    Spacing spacing = Spacing.of(set.style());
    Layout complete = layout;
    for (PanelBox planned : PanelPlanner.plan(set).panels()) {
      if (complete.panel(planned.panel()).isEmpty()) {
        complete = inserted(complete, planned, spacing.gutterPx());
      }
    }
    return complete;
  }

  private static Layout inserted(Layout layout, PanelBox panel, double gutterPx) {
    double above =
        layout.panels().stream()
            .filter(other -> other.panel() < panel.panel())
            .mapToDouble(other -> other.box().bottom())
            .max()
            .orElse(0);
    Box size = panel.box();
    double atPx = Math.max(1, above);
    Layout opened = new Opening(atPx, gutterPx + size.height()).in(layout);
    double x = Math.max(0, Math.min(size.x(), layout.widthPx() - size.width()));
    double width = Math.min(size.width(), layout.widthPx());
    List<PanelBox> panels = new ArrayList<>(opened.panels());
    panels.add(panel.at(new Box(x, above + gutterPx, width, size.height())));
    panels.sort(Comparator.comparingInt(PanelBox::panel));
    return opened.withPanels(panels);
  }
}
