package io.github.readfall.window.parts;

import io.github.readfall.base.wording.Wording;
import java.awt.BorderLayout;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;

/** The pages at the right edge of the window, one of them shown. */
public final class SidePane extends JPanel {

  private static final long serialVersionUID = 1;

  private final JTabbedPane tabs = new JTabbedPane();
  private final Map<String, JComponent> pages = new LinkedHashMap<>();

  public SidePane() {
    super(new BorderLayout());
    tabs.setName("side");
    tabs.getAccessibleContext().setAccessibleName(Wording.of("side.title"));
    tabs.putClientProperty("JTabbedPane.tabAreaAlignment", "fill");
    add(tabs);
  }

  /**
   * Adds a page.
   *
   * @param name of the page; {@code side.NAME} is the key of its title
   */
  public void page(String name, JComponent page) {
    pages.put(name, page);
    tabs.addTab(Wording.of("side." + name), page);
  }

  /** Shows a page, and moves the focus there. */
  public void show(String name) {
    JComponent page = pages.get(name);
    if (page == null) {
      throw new IllegalArgumentException("no such page: " + name);
    }
    tabs.setSelectedComponent(page);
    Focus.into(page);
  }
}
