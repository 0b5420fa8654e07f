package io.github.readfall.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import io.github.readfall.series.autosave.ThemeChoice;
import io.github.readfall.window.parts.Notice;
import java.awt.Component;
import java.awt.Container;
import java.awt.GraphicsEnvironment;
import java.awt.KeyboardFocusManager;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.accessibility.Accessible;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JMenu;
import javax.swing.UIManager;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Everything in the window has a name, is reached by keys, and keeps its place and its words. */
class ReachWindowIT {

  private static final String SCRIPT =
      """
      Title: Ebb
      Cast: Ilse, Wouter

      PANEL 1
      The mill.

      ILSE: It turns.
      WOTUER: Leave it be.
      """;

  private final Path folder;

  ReachWindowIT(@TempDir Path folder) {
    this.folder = folder;
  }

  @BeforeEach
  void aDisplayIsThere() {
    assumeFalse(GraphicsEnvironment.isHeadless(), "there is no display: the window was not tested");
  }

  private Path script(String name) throws Exception {
    Path script = folder.resolve(name).resolve("script.txt");
    Files.createDirectories(script.getParent());
    return Files.writeString(script, SCRIPT);
  }

  private OpenWindow open(Path script) {
    return OpenWindow.with(folder.resolve("state"), script);
  }

  private static List<Component> all(Container in) {
    List<Component> all = new ArrayList<>();
    Component[] children = in instanceof JMenu menu ? menu.getMenuComponents() : in.getComponents();
    for (Component child : children) {
      all.add(child);
      if (child instanceof Container inner) {
        all.addAll(all(inner));
      }
    }
    return all;
  }

  private static boolean isReached(Component component) {
    boolean takesKeys =
        component instanceof JComponent one
            && (one.getInputMap().size() > 0 || one instanceof AbstractButton);
    return takesKeys && component.isFocusable() && component.isVisible();
  }

  private static String nameOf(Component component) {
    String name =
        component instanceof Accessible one ? one.getAccessibleContext().getAccessibleName() : "";
    return name == null ? "" : name;
  }

  @Test
  void everyControlHasANameForScreenReaders() throws Exception {
    try (OpenWindow window = open(script("one"))) {
      window.settled();
      window.run(() -> window.window().notices().show(Notice.of("example", "Something is so.")));
      window.run(() -> window.window().work().editor().find());
      window.choose("menu.help");
      window.choose("menu.trueSize");
      List<String> nameless = new ArrayList<>();
      List<String> unworded = new ArrayList<>();
      window.run(
          () -> {
            List<Component> everything = new ArrayList<>(all(window.window().frame()));
            for (Window dialog : window.window().frame().getOwnedWindows()) {
              everything.addAll(all(dialog));
            }
            for (Component component : everything) {
              String name = nameOf(component);
              if (isReached(component) && name.isBlank()) {
                nameless.add(component.getClass() + " " + component.getName());
              }
              String text = component instanceof JLabel label ? label.getText() : name;
              if (text != null && text.matches("[a-z]+(\\.[a-zA-Z]+)+")) {
                unworded.add(text);
              }
            }
          });
      assertEquals(List.of(), nameless);
      assertEquals(List.of(), unworded);
    }
  }

  private static String focused() {
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    return owner == null || owner.getName() == null ? "" : owner.getName();
  }

  @Test
  void tabVisitsAllPartsAndReturnsToTheText() throws Exception {
    try (OpenWindow window = open(script("one"))) {
      window.settled();
      window.run(() -> window.window().work().editor().focusText());
      String first = window.ask(ReachWindowIT::focused);
      List<String> seen = new ArrayList<>();
      window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_TAB); // in a text, Tab alone is written
      for (int i = 0; i < 40 && !seen.contains(first); i++) {
        seen.add(window.ask(ReachWindowIT::focused));
        window.key(KeyEvent.VK_TAB);
      }
      assertTrue(
          seen.containsAll(
              Set.of(
                  first,
                  "zoom.fit",
                  "layers",
                  "phones",
                  "phone.read",
                  "phone.true",
                  "lower.findings.readers",
                  "findings.error",
                  "findings.words",
                  "findings.list")),
          seen.toString());
    }
  }

  @Test
  void theKeyForTheNextFindingExplainsItAlsoWhileWriting() throws Exception {
    try (OpenWindow window = open(script("one"))) {
      window.settled();
      window.run(() -> window.window().work().editor().focusText());
      window.key(KeyEvent.VK_F8);
      JList<?> list = window.window().work().findings().shownList();
      window.waitUntil("a finding is chosen", () -> list.getSelectedIndex() == 0);
      assertEquals(8, window.ask(() -> window.window().work().editor().caret().line()));
    }
  }

  @Test
  void theFindingsKeepTheirShareHoweverLargeTheWindow() throws Exception {
    try (OpenWindow window = open(script("one"))) {
      window.settled();
      double before = window.ask(() -> window.window().work().shares().get("findings"));
      window.run(() -> window.window().notices().show(Notice.of("example", "So. ".repeat(90))));
      window.run(() -> window.window().frame().setSize(700, 500));
      window.waitUntil("it is small", () -> window.window().work().getWidth() < 710);
      JComponent findings = window.window().work().lowerPane();
      double whole = window.ask(() -> findings.getParent().getHeight());
      window.waitUntil(
          "they have their share",
          () -> Math.abs(findings.getHeight() / whole - (1 - before)) < 0.08);
      assertEquals(before, window.ask(() -> window.window().work().shares().get("findings")));
    }
  }

  @Test
  void everyControlIsWhollyVisibleInANarrowWindow() throws Exception {
    try (OpenWindow window = open(script("one"))) {
      window.settled();
      window.run(() -> window.window().frame().setSize(900, 600));
      for (String name : List.of("zoom.fit", "zoom.actual", "zoom.phone", "layers", "phones")) {
        JComponent control = window.named(name);
        window.waitUntil(
            name + " is seen",
            () -> {
              var seen = control.getVisibleRect();
              return seen.width == control.getWidth()
                  && seen.height == control.getHeight()
                  && seen.width > 20;
            });
      }
    }
  }

  @Test
  void discardedTextIsStillThereIfTheNextScriptCannotBeOpened() throws Exception {
    Path script = script("one");
    try (OpenWindow window = open(script)) {
      window.settled();
      window.run(() -> window.window().work().editor().goTo(7, 15));
      window.type(" again");
      window.run(() -> window.window().open(folder.resolve("gone")));
      window.click(window.named("action.Discard"));
      window.waitUntil("it is reported", () -> window.window().notices().notices().size() > 0);
      window.run(() -> window.window().work().editor().focusText());
      window.type(" and");
      window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
      window.waitUntil("it is saved", () -> !window.window().workplace().hasUnsaved());
      assertTrue(Files.readString(script).contains("ILSE: It turns again and."));
    }
  }

  @Test
  void openingWhatIsOpenLosesNothing() throws Exception {
    Path script = script("one");
    try (OpenWindow window = open(script)) {
      window.settled();
      window.run(() -> window.window().work().editor().goTo(7, 15));
      window.type(" again");
      window.run(() -> window.window().open(folder.resolve("one")));
      assertEquals(List.of(), window.ask(() -> window.window().notices().notices()));
      assertTrue(window.ask(() -> window.window().work().editor().text()).contains("turns again"));
    }
  }

  @Test
  void anEpisodeComesBackAsItWasLeftForAnother() throws Exception {
    Path one = script("one");
    Path two = script("two");
    try (OpenWindow window = open(one)) {
      window.settled();
      window.run(() -> window.window().work().editor().goTo(7, 3));
      for (Path next : List.of(two, one)) {
        window.run(() -> window.window().open(next));
        window.waitUntil(
            "it is open",
            () -> window.window().workplace().opened().orElseThrow().files().script().equals(next));
      }
      assertEquals(7, window.ask(() -> window.window().work().editor().caret().line()));
    }
  }

  @Test
  void anotherThemeChangesTextsThatAreAlreadyShown() throws Exception {
    try (OpenWindow window = open(script("one"))) {
      window.settled();
      window.run(() -> window.window().notices().show(Notice.of("example", "Something is so.")));
      for (ThemeChoice choice : List.of(ThemeChoice.DARK, ThemeChoice.LIGHT)) {
        window.choose("menu." + choice.name().toLowerCase(Locale.ROOT));
        JComponent notice = window.named("notice.example");
        JComponent saved = window.named("saved");
        assertEquals(
            window.ask(() -> UIManager.getColor("Readfall.notice").getRGB()),
            window.ask(() -> notice.getBackground().getRGB()));
        assertEquals(
            window.ask(() -> UIManager.getColor("Readfall.quiet").getRGB()),
            window.ask(() -> saved.getForeground().getRGB()));
        assertNotEquals(
            window.ask(() -> UIManager.getColor("Label.foreground").getRGB()),
            window.ask(() -> saved.getForeground().getRGB()));
      }
    }
  }
}
