package io.github.readfall.plan;

import io.github.readfall.base.geom.Box;
import io.github.readfall.script.Panel;
import io.github.readfall.script.Script;
import io.github.readfall.strip.Layout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Panels that stay together when an episode is split: a row, or a panel with its insets; mostly one
 * panel.
 *
 * @param topPx where it begins, in strip pixels
 * @param bottomPx where it ends, in strip pixels
 * @param firstPanel its first panel's place in the script, from 1
 * @param lastPanel its last panel's place in the script
 * @param before the pause between it and the block above
 */
record Block(double topPx, double bottomPx, int firstPanel, int lastPanel, Pause before) {

  /** The pause between two blocks, the longest first. */
  enum Pause {
    /** A new scene begins. */
    SCENE,
    /** The same scene continues. */
    PANEL,
    /** Somebody speaks last above and first below. */
    EXCHANGE
  }

  /** The blocks of an episode, in script order; panels without a place go with those above. */
  static List<Block> of(Script script, Layout layout) {
    List<Block> blocks = new ArrayList<>();
    Optional<Panel> above = Optional.empty();
    for (Panel panel : script.panels()) {
      Optional<Box> box = layout.panel(panel.number()).map(place -> place.box());
      int last = blocks.size() - 1;
      Pause pause = above.map(other -> pause(other, panel)).orElse(Pause.SCENE);
      if (last >= 0 && (box.isEmpty() || box.get().y() < blocks.get(last).bottomPx())) {
        blocks.set(last, blocks.get(last).with(panel.number(), box));
      } else if (box.isPresent()) {
        int first = last < 0 ? 1 : panel.number();
        blocks.add(new Block(box.get().y(), box.get().bottom(), first, panel.number(), pause));
      }
      above = Optional.of(panel);
    }
    return blocks;
  }

  private static Pause pause(Panel above, Panel below) {
    if (!above.scene().equals(below.scene())) {
      return Pause.SCENE;
    }
    return GutterPacing.isExchange(above, below) ? Pause.EXCHANGE : Pause.PANEL;
  }

  private Block with(int panel, Optional<Box> box) {
    double top = box.map(place -> Math.min(topPx, place.y())).orElse(topPx);
    double bottom = box.map(place -> Math.max(bottomPx, place.bottom())).orElse(bottomPx);
    return new Block(top, bottom, firstPanel, panel, before);
  }
}
