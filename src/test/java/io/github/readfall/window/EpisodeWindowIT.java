package io.github.readfall.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.draw.Layer;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.window.model.EpisodeSnapshot;
import java.awt.GraphicsEnvironment;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import javax.swing.JList;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A person's first hour, in a real window with real keys. */
class EpisodeWindowIT {

  /** The strip is 800 px wide, so that everything on it is easy to calculate. */
  private static final String SCRIPT =
      """
      Title: Ebb
      Cast: Ilse, Wouter

      PANEL 1
      The mill.

      ILSE: It turns.
      WOUTER: Leave it be.

      PANEL 2
      Water.

      ILSE: Listen.
      """;

  private static final int SEA = 0x336699;

  private final Path folder;

  EpisodeWindowIT(@TempDir Path folder) {
    this.folder = folder;
  }

  @BeforeEach
  void aDisplayIsThere() {
    assumeFalse(GraphicsEnvironment.isHeadless(), "there is no display: the window was not tested");
  }

  private Path script(String text) throws Exception {
    Path script = folder.resolve("ebb").resolve("script.txt");
    Files.createDirectories(script.getParent());
    return Files.writeString(script, text);
  }

  private Path state() {
    return folder.resolve("state");
  }

  private static PlacedBalloon balloon(EpisodeSnapshot shown, String id) {
    return shown.galley().balloons().stream()
        .filter(balloon -> balloon.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theSampleOpensFromTheStart() {
    try (OpenWindow window = OpenWindow.with(state())) {
      window.click(window.named("start.Open the sample"));
      EpisodeSnapshot shown = window.settled();
      assertEquals("The Overdue Tide", shown.episode().script().title());
      assertTrue(Files.exists(state().resolve("sample").resolve("series.toml")));
    }
  }

  @Test
  void typedTextIsFittedSavedAndRestored() throws Exception {
    Path script = script(SCRIPT);
    try (OpenWindow window = OpenWindow.with(state(), script)) {
      double before = balloon(window.settled(), "p1-1").box().width();
      window.run(() -> window.window().work().editor().goTo(7, 15));
      window.type(" and turns and turns");
      EpisodeSnapshot after = window.settled();
      assertTrue(balloon(after, "p1-1").box().width() > before);
      assertFalse(Files.readString(script).contains("turns and turns"));
      window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
      window.waitUntil("it is saved", () -> !window.window().workplace().hasUnsaved());
      assertTrue(Files.readString(script).contains("ILSE: It turns and turns and turns."));
    }
    try (OpenWindow window = OpenWindow.with(state())) {
      assertTrue(window.settled().text().contains("It turns and turns and turns."));
      assertEquals(7, window.ask(() -> window.window().work().editor().caret().line()));
    }
  }

  private static List<String> rules(EpisodeSnapshot shown) {
    return shown.findings().stream().map(Finding::rule).toList();
  }

  @Test
  void textThatDoesNotFitAndTightGapsAreShownWhileTyping() throws Exception {
    Path script = script(SCRIPT);
    Files.writeString(
        script.resolveSibling("layout.json"),
        """
        {"readfall-layout": 1, "strip": {"widthPx": 1600, "heightPx": 3000},
         "panels": [{"panel": 1, "box": [100, 100, 1400, 1200]},
                    {"panel": 2, "box": [100, 1500, 1400, 1200]}],
         "balloons": [
           {"id": "p1-1", "cue": {"panel": 1, "speaker": "ILSE", "text": "It turns."},
            "box": [200, 200, 520, 300], "pinned": true},
           {"id": "p1-2", "cue": {"panel": 1, "speaker": "WOUTER", "text": "Leave it be."},
            "box": [200, 506, 520, 300], "pinned": true}]}
        """);
    try (OpenWindow window = OpenWindow.with(state(), script)) {
      assertFalse(rules(window.settled()).contains("space/overflow"));
      window.run(() -> window.window().work().editor().goTo(7, 15));
      window.type(" and turns and turns and turns and turns and turns and turns and turns");
      EpisodeSnapshot full =
          window.settled("it overflows", s -> rules(s).contains("space/overflow"));
      assertTrue(rules(full).contains("space/crowded"), rules(full).toString());
      assertTrue(window.ask(() -> window.window().work().strip().scene().has(Layer.OVERFLOW)));
      assertTrue(window.ask(() -> window.window().work().strip().scene().has(Layer.GAPS)));
    }
  }

  @Test
  void aFindingLeadsToItsLineAndItsPlaceOnTheStrip() throws Exception {
    String wordy = "word ".repeat(40).strip();
    Path script = script(SCRIPT + "\nPANEL 3\nSky.\n\nPANEL 4\nMore.\n\nWOUTER: " + wordy + ".\n");
    try (OpenWindow window = OpenWindow.with(state(), script)) {
      EpisodeSnapshot shown = window.settled();
      double top = window.ask(() -> window.window().work().strip().visible().topPx());
      JList<?> list = (JList<?>) window.named("findings.list");
      int row = window.ask(() -> rowOf(list, "words/long"));
      Rectangle cell = window.ask(() -> list.getCellBounds(row, row));
      window.click(list, new Point(cell.x + 30, cell.y + cell.height / 2));
      int line = balloon(shown, "p4-1").cue().line();
      window.waitUntil(
          "the caret is there", () -> window.window().work().editor().caret().line() == line);
      window.waitUntil(
          "the strip is there",
          () -> {
            var seen = window.window().work().strip().visible();
            var box = balloon(shown, "p4-1").box();
            return seen.topPx() <= box.y() && box.y() <= seen.bottomPx();
          });
      assertNotEquals(top, window.ask(() -> window.window().work().strip().visible().topPx()));
    }
  }

  private static int rowOf(JList<?> list, String rule) {
    for (int i = 0; i < list.getModel().getSize(); i++) {
      if (((Finding) list.getModel().getElementAt(i)).rule().equals(rule)) {
        return i;
      }
    }
    throw new AssertionError("not found: " + rule);
  }

  @Test
  void bothVersionsOfAScriptAreKept() throws Exception {
    Path script = script(SCRIPT);
    try (OpenWindow window = OpenWindow.with(state(), script)) {
      window.settled();
      window.run(() -> window.window().work().editor().goTo(13, 13));
      window.type(" now");
      Files.writeString(script, SCRIPT.replace("Water.", "Still water."));
      window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
      window.waitUntil("it is asked", () -> window.window().notices().notices().size() > 0);
      window.click(window.named("action.Keep mine"));
      window.waitUntil("it is saved", () -> !window.window().workplace().hasUnsaved());
      assertTrue(Files.readString(script).contains("Listen now."));
      Path theirs = script.resolveSibling("script.theirs.txt");
      assertTrue(Files.readString(theirs).contains("Still water."));
    }
  }

  @Test
  void artIsShownUnderTheLettering() throws Exception {
    Path script = script(SCRIPT);
    Path art = Files.createDirectories(script.resolveSibling("art"));
    BufferedImage page = new BufferedImage(800, 2000, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < page.getHeight(); y++) {
      for (int x = 0; x < page.getWidth(); x++) {
        page.setRGB(x, y, SEA);
      }
    }
    ImageIO.write(page, "png", art.resolve("page1.png").toFile());
    try (OpenWindow window = OpenWindow.with(state(), script)) {
      window.settled();
      window.waitUntil("the art is there", () -> share(window.photograph(1), SEA) > 0.1);
    }
  }

  /** The share of a colour in a picture, 0 to 1. */
  private static double share(BufferedImage image, int rgb) {
    long of = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        of += (image.getRGB(x, y) & 0xffffff) == rgb ? 1 : 0;
      }
    }
    return (double) of / ((long) image.getWidth() * image.getHeight());
  }
}
