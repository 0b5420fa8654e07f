package io.github.readfall.plan;

import io.github.readfall.script.Cue;
import io.github.readfall.script.CueKind;
import io.github.readfall.script.Panel;
import java.util.List;

/** Gives gutters their heights: the longer the gutter, the longer the pause. */
final class GutterPacing {

  private GutterPacing() {}

  /** The height of the gutter between two panels of the script, in strip pixels. */
  static double px(Panel above, Panel below, Spacing spacing) {
    if (!above.scene().equals(below.scene())) {
      return spacing.sceneGutterPx();
    }
    return isExchange(above, below) ? spacing.tightGutterPx() : spacing.gutterPx();
  }

  /** Returns true if somebody speaks last above and somebody first below, sound effects aside. */
  static boolean isExchange(Panel above, Panel below) {
    List<Cue> last = words(above);
    List<Cue> first = words(below);
    return !last.isEmpty()
        && !first.isEmpty()
        && above.scene().equals(below.scene())
        && last.get(last.size() - 1).kind() == CueKind.DIALOGUE
        && first.get(0).kind() == CueKind.DIALOGUE;
  }

  private static List<Cue> words(Panel panel) {
    return panel.cues().stream().filter(cue -> cue.kind() != CueKind.EFFECT).toList();
  }
}
