package io.github.readfall.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import io.github.readfall.rules.RulePage;
import io.github.readfall.rules.RulePages;
import java.awt.GraphicsEnvironment;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import javax.swing.JList;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.MenuElement;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The help, opened and read by keys alone. */
class HelpWindowIT {

  private final Path folder;

  HelpWindowIT(@TempDir Path folder) {
    this.folder = folder;
  }

  @BeforeEach
  void aDisplayIsThere() {
    assumeFalse(GraphicsEnvironment.isHeadless(), "there is no display: the window was not tested");
  }

  private OpenWindow open() throws Exception {
    Path script = folder.resolve("ebb").resolve("script.txt");
    Files.createDirectories(script.getParent());
    Files.writeString(script, "Title: Ebb\nCast: Ilse\n\nPANEL 1\n\nILSE: It turns.\n");
    OpenWindow window = OpenWindow.with(folder.resolve("state"), script);
    window.settled();
    window.run(() -> window.window().work().editor().focusText());
    window.key(KeyEvent.VK_F1);
    window.waitUntil("the help is open", () -> Dialogs.isOpen(window, "help"));
    return window;
  }

  private static List<JMenuItem> items(MenuElement in) {
    List<JMenuItem> items = new ArrayList<>();
    for (MenuElement child : in.getSubElements()) {
      if (child instanceof JMenuItem item && !(child instanceof JMenu)) {
        items.add(item);
      }
      items.addAll(items(child));
    }
    return items;
  }

  @Test
  void everyKeyOfTheMenusIsListedWithItsWords() throws Exception {
    try (OpenWindow window = open()) {
      JTable table = (JTable) Dialogs.part(window, "help", "help.keys");
      JMenuBar bar = window.window().frame().getJMenuBar();
      List<String> missing = new ArrayList<>();
      int found = 0;
      for (JMenuItem item : window.ask(() -> items(bar))) {
        if (item.getAccelerator() != null) {
          found++;
          if (!window.ask(() -> isListed(table, item))) {
            missing.add(item.getText());
          }
        }
      }
      assertTrue(found > 20, "only " + found + " keys in the menus");
      assertEquals(List.of(), missing);
      assertTrue(window.ask(table::getRowCount) > found, "keys of the parts are missing");
    }
  }

  private static boolean isListed(JTable table, JMenuItem item) {
    String modifiers = InputEvent.getModifiersExText(item.getAccelerator().getModifiers());
    String key = KeyEvent.getKeyText(item.getAccelerator().getKeyCode());
    for (int row = 0; row < table.getRowCount(); row++) {
      if (table.getValueAt(row, 0).equals(modifiers.isEmpty() ? key : modifiers + "+" + key)
          && table.getValueAt(row, 1).equals(item.getText())) {
        return true;
      }
    }
    return false;
  }

  @Test
  void everyRuleIsListedAndTheListIsFiltered() throws Exception {
    try (OpenWindow window = open()) {
      JTabbedPane pages = (JTabbedPane) Dialogs.part(window, "help", "help.pages");
      window.run(() -> pages.setSelectedIndex(1));
      JList<?> list = (JList<?>) Dialogs.part(window, "help", "help.rules");
      TreeSet<String> listed = new TreeSet<>();
      window.run(
          () -> {
            for (int i = 0; i < list.getModel().getSize(); i++) {
              listed.add(((RulePage) list.getModel().getElementAt(i)).id());
            }
          });
      TreeSet<String> all = new TreeSet<>();
      RulePages.rules().forEach(rule -> all.add(rule.id()));
      RulePages.others().forEach(rule -> all.add(rule.id()));
      assertEquals(all, listed);
      JTextComponent words = (JTextComponent) Dialogs.part(window, "help", "help.words");
      window.run(words::requestFocusInWindow);
      window.waitUntil("the field has the keyboard", words::isFocusOwner);
      window.type("tangent");
      window.waitUntil("fewer are left", () -> list.getModel().getSize() < all.size() / 4);
      JTextComponent rule = (JTextComponent) Dialogs.part(window, "help", "help.rule");
      assertTrue(window.ask(rule::getText).contains("tangent"));
    }
  }

  @Test
  void thePagesAreReachedByKeysAndEscapeCloses() throws Exception {
    try (OpenWindow window = open()) {
      JTabbedPane pages = (JTabbedPane) Dialogs.part(window, "help", "help.pages");
      window.run(pages::requestFocusInWindow);
      window.waitUntil("the names have the keyboard", pages::isFocusOwner);
      window.key(KeyEvent.VK_RIGHT);
      window.key(KeyEvent.VK_RIGHT);
      window.waitUntil("the third page is shown", () -> pages.getSelectedIndex() == 2);
      JTextComponent care = (JTextComponent) Dialogs.part(window, "help", "help.cautions");
      String said = window.ask(care::getText);
      for (String about : List.of("Rest your eyes", "low vision", "licence", "law")) {
        assertTrue(said.contains(about), about);
      }
      window.key(KeyEvent.VK_ESCAPE);
      window.waitUntil("it is closed", () -> !Dialogs.isOpen(window, "help"));
    }
  }
}
