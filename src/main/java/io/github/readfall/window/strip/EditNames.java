package io.github.readfall.window.strip;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.script.Script;
import io.github.readfall.strip.edits.StripEdit;
import io.github.readfall.strip.edits.StripItem;
import io.github.readfall.strip.gesture.Gesture;
import io.github.readfall.strip.gesture.Grip;
import java.util.Set;

/** Names changes made by hand, for Undo and Redo. */
final class EditNames {

  private EditNames() {}

  /** The name of a change made by dragging. */
  static String of(Gesture gesture, StripEdit edit, Script script) {
    if (gesture.grip() instanceof Grip.Edge edge) {
      return Wording.of("undo.size", ItemNames.of(edge.item(), script));
    }
    if (gesture.grip() instanceof Grip.Gutter gutter) {
      return Wording.of("undo.gutter", gutter.panel());
    }
    if (edit instanceof StripEdit.Move move && move.balloons().size() > 1) {
      return Wording.of("undo.move", Wording.of("item.several", move.balloons().size()));
    }
    return gesture.grip() instanceof Grip.Body body
        ? Wording.of("undo.move", ItemNames.of(body.item(), script))
        : "";
  }

  /**
   * The name of a change to the selected elements.
   *
   * @param key of the words
   */
  static String of(String key, Set<StripItem> items, Script script) {
    return Wording.of(key, ItemNames.of(items, script));
  }
}
