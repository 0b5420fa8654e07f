package io.github.readfall.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.window.model.EpisodeSnapshot;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.GraphicsEnvironment;
import java.awt.KeyboardFocusManager;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.swing.AbstractButton;
import javax.swing.JLabel;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Complete tasks in the window, done with keys alone. */
class JourneyWindowIT {

  private static final String SCRIPT =
      """
      Title: Ebb
      Cast: Ilse, Wouter

      PANEL 1

      ILSE: It turns again.

      PANEL 2

      WOUTER: Listen to the water.
      ILSE: No.
      """;

  private static final int MOST_TABS = 80;

  private final Path episode;

  JourneyWindowIT(@TempDir Path folder) throws Exception {
    episode = folder.resolve("ebb");
    Files.createDirectories(episode);
    Files.writeString(episode.resolve("script.txt"), SCRIPT);
  }

  @BeforeEach
  void aDisplayIsThere() {
    assumeFalse(GraphicsEnvironment.isHeadless(), "there is no display: the window was not tested");
  }

  private OpenWindow open() {
    OpenWindow window = OpenWindow.with(episode.resolve("state"), episode);
    window.settled();
    return window;
  }

  private void draw(int... tops) throws Exception {
    Files.createDirectories(episode.resolve("art"));
    BufferedImage strip = new BufferedImage(1600, 3000, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = strip.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, 1600, 3000);
    for (int top : tops) {
      g.setColor(new Color(0x9fb8c4));
      g.fillRect(100, top, 1400, 1300);
    }
    g.dispose();
    ImageIO.write(strip, "png", episode.resolve("art").resolve("01.png").toFile());
  }

  private static Optional<Component> owner() {
    return Optional.ofNullable(
        KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner());
  }

  private static String focused() {
    return owner().map(Component::getName).orElse("");
  }

  /** Presses Tab until the control of a name has the focus. */
  private static void tabTo(OpenWindow window, String name) {
    List<String> seen = new ArrayList<>();
    for (int i = 0; i < MOST_TABS; i++) {
      String now = window.ask(JourneyWindowIT::focused);
      if (name.equals(now)) {
        return;
      }
      seen.add(now);
      window.key(KeyEvent.VK_TAB);
    }
    throw new AssertionError(name + " is not reached by Tab: " + seen);
  }

  /** Selects a menu entry by mnemonics. */
  private static void menu(OpenWindow window, String name) {
    List<Integer> letters = window.ask(() -> letters(window.window().frame().getJMenuBar(), name));
    window.key(KeyEvent.VK_ALT, letters.get(0));
    window.key(letters.get(1));
  }

  private static List<Integer> letters(JMenuBar bar, String name) {
    for (int i = 0; i < bar.getMenuCount(); i++) {
      JMenu menu = bar.getMenu(i);
      for (Component item : menu.getMenuComponents()) {
        if (name.equals(item.getName()) && item instanceof JMenuItem entry) {
          return List.of(menu.getMnemonic(), entry.getMnemonic());
        }
      }
    }
    throw new AssertionError("no menu has " + name);
  }

  private static void told(OpenWindow window, String words) {
    window.waitUntil(
        words,
        () ->
            window.window().notices().notices().stream()
                .anyMatch(notice -> notice.sentence().contains(words)));
  }

  private static void save(OpenWindow window) {
    window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
    window.waitUntil("it is saved", () -> !window.window().workplace().hasUnsaved());
  }

  private static PlacedBalloon balloon(EpisodeSnapshot shown, String id) {
    return shown.galley().balloons().stream()
        .filter(balloon -> balloon.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyEntryOfAMenuHasAMnemonicOfItsOwn() {
    try (OpenWindow window = open()) {
      List<String> twice = window.ask(() -> sharedLetters(window.window().frame().getJMenuBar()));
      assertEquals(List.of(), twice);
    }
  }

  private static List<String> sharedLetters(JMenuBar bar) {
    List<String> twice = new ArrayList<>(shared(Arrays.asList(bar.getComponents())));
    for (int i = 0; i < bar.getMenuCount(); i++) {
      twice.addAll(shared(Arrays.asList(bar.getMenu(i).getMenuComponents())));
    }
    return twice;
  }

  private static List<String> shared(List<Component> entries) {
    List<Integer> seen = new ArrayList<>();
    List<String> twice = new ArrayList<>();
    for (Component entry : entries) {
      if (entry instanceof AbstractButton button && button.getMnemonic() != 0) {
        if (seen.contains(button.getMnemonic())) {
          twice.add(button.getName() + " " + (char) button.getMnemonic());
        }
        seen.add(button.getMnemonic());
      }
    }
    return twice;
  }

  @Test
  void fromAScriptToItsPlan() throws Exception {
    try (OpenWindow window = open()) {
      window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_END);
      window.type("wouter");
      window.key(KeyEvent.VK_ESCAPE); // closes the suggestions without accepting one
      window.key(KeyEvent.VK_SHIFT, KeyEvent.VK_SEMICOLON);
      window.type(" it counts.");
      EpisodeSnapshot typed = window.settled();
      assertEquals(4, typed.galley().balloons().size(), typed::text);
      save(window);
      assertTrue(Files.readString(episode.resolve("script.txt")).endsWith("wouter: it counts."));

      window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_7);
      tabTo(window, PLAN);
      String words =
          window.ask(() -> owner().orElseThrow().getAccessibleContext().getAccessibleDescription());
      long heightPx = Math.round(typed.plan().heightPx());
      assertTrue(words.contains(Long.toString(heightPx)), words);
    }
  }

  private static final String PLAN = "overview";

  @Test
  void fromScriptAndArtToLetteringLayers() throws Exception {
    draw(100, 1600);
    try (OpenWindow window = open()) {
      menu(window, "menu.panels");
      told(window, "2 panel boxes found in the art, for 2 in the script");
      window.settled("the boxes are those of the art", shown -> shown.galley().heightPx() == 3000);
      menu(window, "menu.place");
      told(window, "Placed 3 balloons");
      EpisodeSnapshot placed = window.settled();

      window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_2);
      while (!window.ask(
          () -> window.window().stripController().chosen().balloons().contains("p2-2"))) {
        window.key(KeyEvent.VK_F7);
      }
      int far = (int) (balloon(placed, "p2-2").box().y() - balloon(placed, "p2-1").box().y());
      for (int moved = 0; moved < far; moved += 40) {
        window.key(KeyEvent.VK_SHIFT, KeyEvent.VK_UP);
      }
      EpisodeSnapshot over =
          window.settled(
              "they are too near",
              shown -> shown.findings().stream().anyMatch(f -> f.fix().isPresent()));
      int before = over.findings().size();
      window.key(KeyEvent.VK_F8);
      while (!window.ask(() -> window.named("finding.fix").isEnabled())) {
        window.key(KeyEvent.VK_F8);
      }
      window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_M);
      window.settled("less is found", shown -> shown.findings().size() < before);

      write(window, "export.kind.layers");
      Path layers = episode.resolve("layers");
      window.waitUntil("the layers are there", () -> svgs(episode).size() == 1);
      assertFalse(Files.exists(layers.resolve("nothing")));
      assertTrue(Files.readString(episode.resolve("layout.json")).contains("\"pinned\": true"));
    }
  }

  private static List<Path> svgs(Path folder) throws Exception {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> file.toString().endsWith("-lettering.svg")).toList();
    }
  }

  /** Exports one kind of file by keys alone. */
  private static void write(OpenWindow window, String kind) {
    window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_E);
    window.waitUntil("the dialog is open", () -> dialog(window).isPresent());
    Window dialog = window.ask(() -> dialog(window).orElseThrow());
    Component first =
        window.ask(() -> dialog.getFocusTraversalPolicy().getInitialComponent(dialog));
    window.run(first::requestFocus); // as a window manager would
    window.waitUntil("the dialog has the focus", first::isFocusOwner);
    tabTo(window, kind);
    window.key(KeyEvent.VK_SPACE);
    window.waitUntil(
        () -> "it is ready to be written; the dialog says: " + state(dialog),
        () -> OpenWindow.find(dialog, "export.write").orElseThrow().isEnabled());
    tabTo(window, "export.write");
    window.key(KeyEvent.VK_SPACE);
  }

  private static String state(Window dialog) {
    return OpenWindow.find(dialog, "export.state")
        .map(state -> ((JLabel) state).getText())
        .orElseThrow();
  }

  private static Optional<Window> dialog(OpenWindow window) {
    return Arrays.stream(window.window().frame().getOwnedWindows())
        .filter(owned -> owned.isShowing() && "export".equals(owned.getName()))
        .findFirst();
  }

  @Test
  void fromAFinishedStripToAuditAndProof() throws Exception {
    draw(100, 1600);
    Files.writeString(
        episode.resolve("layout.json"),
        """
        {"readfall-layout": 1, "strip": {"widthPx": 1600, "heightPx": 3000},
         "panels": [{"panel": 1, "box": [100, 100, 1400, 1300]},
                    {"panel": 2, "box": [100, 1600, 1400, 1300]}],
         "balloons": [{"id": "p1-1", "box": [300, 200, 420, 240], "fontPx": 40},
                      {"id": "p2-1", "box": [300, 1700, 420, 240], "fontPx": 40},
                      {"id": "p2-2", "box": [900, 2200, 300, 200], "fontPx": 40}]}
        """);
    try (OpenWindow window = open()) {
      List<String> rules =
          window.settled().findings().stream().map(Finding::rule).distinct().toList();
      assertTrue(rules.contains("legible/size"), rules.toString());
      window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_9);
      tabTo(window, READERS);
      window.key(KeyEvent.VK_DOWN);
      write(window, "export.kind.proof");
      window.waitUntil("the proof is there", () -> pdfs(episode) == 1);
    }
  }

  private static final String READERS = "readers.table";

  private static long pdfs(Path folder) throws Exception {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> file.toString().endsWith(".pdf")).count();
    }
  }
}
