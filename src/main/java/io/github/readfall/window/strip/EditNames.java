package io.github.readfall.window.strip;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.script.Script;
import io.github.readfall.strip.edits.StripEdit;
import io.github.readfall.strip.edits.StripItem;
import io.github.readfall.strip.gesture.Gesture;
import io.github.readfall.strip.gesture.Grip;
import java.util.Set;

/** What changes by hand are called, so that one knows what is undone. */
final class EditNames {

  private EditNames() {}

  /** What was done by pulling. */
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

  /** What was done to what is chosen, by the key of its words. */
  static String of(String key, Set<StripItem> items, Script script) {
    return Wording.of(key, ItemNames.of(items, script));
  }
}
