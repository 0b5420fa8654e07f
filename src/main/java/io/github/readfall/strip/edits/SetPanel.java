package io.github.readfall.strip.edits;

import io.github.readfall.base.geom.Box;
import io.github.readfall.strip.KeepClear;
import io.github.readfall.strip.LaidBalloon;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.Mouth;
import io.github.readfall.strip.PanelBox;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Moves or resizes a panel's box, with its content. */
final class SetPanel {

  /** Difference below which two sides count as equal, in px. House default, no source. */
  private static final double SAME_PX = 0.5;

  private SetPanel() {}

  static Layout in(Layout layout, int panel, Box box) {
    Optional<Box> before = layout.panel(panel).map(PanelBox::box);
    Layout put = boxed(layout, panel, box);
    return before
        .filter(old -> isSameSize(old, box))
        .map(old -> along(put, panel, old, box.x() - old.x(), box.y() - old.y()))
        .orElse(put);
  }

  private static Layout boxed(Layout layout, int panel, Box box) {
    List<PanelBox> panels =
        layout.panel(panel).isPresent()
            ? layout.panels().stream().map(p -> p.panel() == panel ? p.at(box) : p).toList()
            : Stream.concat(layout.panels().stream(), Stream.of(new PanelBox(panel, box)))
                .sorted(Comparator.comparingInt(PanelBox::panel))
                .toList();
    return layout
        .withPanels(panels)
        .withHeight(Math.max(layout.heightPx(), Math.ceil(box.bottom())));
  }

  private static boolean isSameSize(Box a, Box b) {
    return Math.abs(a.width() - b.width()) < SAME_PX && Math.abs(a.height() - b.height()) < SAME_PX;
  }

  private static Layout along(Layout layout, int panel, Box old, double dx, double dy) {
    return layout
        .withBalloons(
            layout.balloons().stream()
                .map(balloon -> isOf(balloon, panel) ? balloon.movedBy(dx, dy) : balloon)
                .toList())
        .withMouths(
            layout.mouths().stream()
                .map(
                    mouth ->
                        mouth.panel() == panel
                            ? new Mouth(
                                panel, mouth.speaker(), mouth.at().plus(dx, dy), mouth.extra())
                            : mouth)
                .toList())
        .withKeepClear(
            layout.keepClear().stream()
                .map(
                    area ->
                        old.covers(area.box().centre())
                            ? new KeepClear(area.box().movedBy(dx, dy), area.what(), area.extra())
                            : area)
                .toList());
  }

  private static boolean isOf(LaidBalloon balloon, int panel) {
    return balloon.cue().filter(cue -> cue.panel() == panel).isPresent();
  }
}
