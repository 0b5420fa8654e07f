package io.github.readfall.strip.edits;

import io.github.readfall.base.geom.Box;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.Opening;
import io.github.readfall.strip.PanelBox;
import java.util.Optional;

/** Limits how far the gutter above a panel can be opened or closed. */
final class GutterRoom {

  private GutterRoom() {}

  /** The opening of a gutter by a length, as far as it goes; empty if nothing moves. */
  static Optional<Opening> opening(Layout layout, int panel, double byPx) {
    return layout
        .panel(panel)
        .map(PanelBox::box)
        .filter(box -> box.y() > 0)
        .map(box -> new double[] {box.y(), Math.max(byPx, -roomPx(layout, box))})
        .filter(atBy -> Math.abs(atBy[1]) >= 1)
        .map(atBy -> new Opening(atBy[0], atBy[1]));
  }

  /**
   * The room between a panel and the lowest border above it; panels that begin beside it move
   * along.
   */
  private static double roomPx(Layout layout, Box panel) {
    double above =
        layout.panels().stream()
            .map(PanelBox::box)
            .filter(box -> box.y() < panel.y())
            .mapToDouble(Box::bottom)
            .max()
            .orElse(0);
    return Math.max(0, panel.y() - above);
  }
}
