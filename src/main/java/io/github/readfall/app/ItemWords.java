package io.github.readfall.app;

import io.github.readfall.edits.Item;
import io.github.readfall.wording.Wording;
import java.util.Set;

/** What things on the strip are called. */
final class ItemWords {

  private ItemWords() {}

  /** One thing by its name, several by how many there are. */
  static String of(Set<Item> items) {
    return items.size() == 1
        ? of(items.iterator().next())
        : Wording.of("item.several", items.size());
  }

  /** A thing by its name. */
  static String of(Item item) {
    if (item instanceof Item.Balloon balloon) {
      return balloon.id();
    }
    if (item instanceof Item.Tip tip) {
      return Wording.of("item.tip", tip.balloon());
    }
    if (item instanceof Item.Panel panel) {
      return Wording.of("item.panel", panel.panel());
    }
    return item instanceof Item.Mouth mouth
        ? Wording.of("item.mouth", mouth.speaker(), mouth.panel())
        : Wording.of("item.area");
  }
}
