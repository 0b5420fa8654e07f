package io.github.readfall.window.strip;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.script.Script;
import io.github.readfall.strip.edits.StripItem;
import io.github.readfall.window.parts.BalloonName;
import java.util.Set;

/** Names elements of the strip. */
final class ItemNames {

  private ItemNames() {}

  /** The name of one element, or the number of several. */
  static String of(Set<StripItem> items, Script script) {
    return items.size() == 1
        ? of(items.iterator().next(), script)
        : Wording.of("item.several", items.size());
  }

  /** The name of an element. */
  static String of(StripItem item, Script script) {
    if (item instanceof StripItem.Balloon balloon) {
      return BalloonName.of(script, balloon.id());
    }
    if (item instanceof StripItem.Tip tip) {
      return Wording.of("item.tip", BalloonName.of(script, tip.balloon()));
    }
    if (item instanceof StripItem.Panel panel) {
      return Wording.of("item.panel", panel.panel());
    }
    return item instanceof StripItem.Mouth mouth
        ? Wording.of("item.mouth", mouth.speaker(), mouth.panel())
        : Wording.of("item.area");
  }
}
