package io.github.readfall.window.help;

import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;

/** The shortcuts of the menu entries. */
final class MenuKeys {

  private MenuKeys() {}

  /** One row for each entry that has a shortcut, menu by menu. */
  static List<KeyRow> of(JMenuBar bar) {
    List<KeyRow> rows = new ArrayList<>();
    for (int i = 0; i < bar.getMenuCount(); i++) {
      JMenu menu = bar.getMenu(i);
      collect(menu.getName(), menu, rows);
    }
    return List.copyOf(rows);
  }

  private static void collect(String where, JMenu menu, List<KeyRow> rows) {
    for (Component child : menu.getMenuComponents()) {
      if (child instanceof JMenu deeper) {
        collect(where, deeper, rows);
      } else if (child instanceof JMenuItem item) {
        Optional.ofNullable(item.getAccelerator())
            .ifPresent(stroke -> rows.add(new KeyRow(where, item.getName(), List.of(stroke))));
      }
    }
  }
}
