package io.github.readfall.app;

import io.github.readfall.wording.Wording;
import java.awt.BorderLayout;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;

/** What stands at the right edge of the window, from top to bottom: one of several pages. */
final class SidePane extends JPanel {

  private static final long serialVersionUID = 1;

  private final JTabbedPane tabs = new JTabbedPane();
  private final Map<String, JComponent> pages = new LinkedHashMap<>();

  SidePane() {
    super(new BorderLayout());
    tabs.setName("side");
    tabs.getAccessibleContext().setAccessibleName(Wording.of("side.title"));
    tabs.putClientProperty("JTabbedPane.tabAreaAlignment", "fill");
    add(tabs);
  }

  /**
   * Adds a page.
   *
   * @param name of it; {@code side.NAME} is the key of its words
   */
  void page(String name, JComponent page) {
    pages.put(name, page);
    tabs.addTab(Wording.of("side." + name), page);
  }

  /** Shows a page, and gives it the keyboard. */
  void show(String name) {
    JComponent page = pages.get(name);
    if (page == null) {
      throw new IllegalArgumentException("no such page: " + name);
    }
    tabs.setSelectedComponent(page);
    Focus.into(page);
  }
}
