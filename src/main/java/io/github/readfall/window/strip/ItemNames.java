package io.github.readfall.window.strip;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.script.Script;
import io.github.readfall.strip.edits.StripItem;
import io.github.readfall.window.parts.BalloonName;
import java.util.Set;

/** What things on the strip are called. */
final class ItemNames {

  private ItemNames() {}

  /** One thing by its name, several by how many there are. */
  static String of(Set<StripItem> items, Script script) {
    return items.size() == 1
        ? of(items.iterator().next(), script)
        : Wording.of("item.several", items.size());
  }

  /** A thing by its name. */
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
