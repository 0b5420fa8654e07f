package io.github.readfall.window;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.script.Script;
import io.github.readfall.window.model.EpisodeSnapshot;
import java.awt.Component;
import java.awt.GraphicsEnvironment;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The house style is changed in a real window with real keys. */
class StyleWindowIT {

  private static final Path SAMPLE = Path.of("sample-scripts", "overdue-tide");

  private final Path folder;

  StyleWindowIT(@TempDir Path folder) {
    this.folder = folder;
  }

  @BeforeEach
  void aDisplayIsThere() {
    assumeFalse(GraphicsEnvironment.isHeadless(), "there is no display: the window was not tested");
  }

  private Path sample() throws IOException {
    Path series = folder.resolve("series");
    Files.createDirectories(series.resolve("ep01"));
    Files.copy(SAMPLE.resolve("series.toml"), series.resolve("series.toml"));
    Files.copy(SAMPLE.resolve("ep01/script.txt"), series.resolve("ep01/script.txt"));
    return series;
  }

  private OpenWindow open(Path script) {
    OpenWindow window = OpenWindow.with(folder.resolve("state"), script);
    window.settled();
    return window;
  }

  private static String focused() {
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    return owner == null || owner.getName() == null ? "" : owner.getName();
  }

  /** Moves the focus to the first value of a voice, by keys. */
  private static void goTo(OpenWindow window, String voice) {
    window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_8);
    window.waitUntil("the page is there", () -> focused().equals("style.kind"));
    window.key(KeyEvent.VK_TAB);
    window.waitUntil("the list has the keys", () -> focused().equals("style.list"));
    window.type(voice);
    window.key(KeyEvent.VK_TAB);
    window.waitUntil("the size has the keys", () -> focused().equals("style.size"));
  }

  private static double widthOf(EpisodeSnapshot shown, String voice) {
    Script script = shown.episode().script();
    List<SetBalloon> balloons =
        shown.galley().set().balloons().stream()
            .filter(balloon -> Typesetter.voice(balloon.cue(), script).equalsIgnoreCase(voice))
            .toList();
    assertFalse(balloons.isEmpty());
    return balloons.stream().mapToDouble(balloon -> balloon.box().width()).sum();
  }

  private static long linesThatDiffer(List<String> before, List<String> after) {
    assertEquals(before.size(), after.size());
    return Stream.iterate(0, i -> i + 1)
        .limit(before.size())
        .filter(i -> !before.get(i).equals(after.get(i)))
        .count();
  }

  private static String text(OpenWindow window, String name) {
    JComponent component = window.named(name);
    return window.ask(() -> ((JTextComponent) component).getText());
  }

  @Test
  void aSizeIsChangedWithKeysAloneAndReverted() throws Exception {
    Path series = sample();
    Path toml = series.resolve("series.toml");
    byte[] before = Files.readAllBytes(toml);
    List<String> lines = Files.readAllLines(toml);
    try (OpenWindow window = open(series.resolve("ep01/script.txt"))) {
      double pim = widthOf(window.settled(), "PIM");
      double odda = widthOf(window.settled(), "elder");
      goTo(window, "pim");
      int seen = window.ask(() -> Pictures.of(window.named("style.specimen")).hashCode());
      window.type("1.4");
      window.waitUntil(
          "the balloon shows it before it is written",
          () -> Pictures.of(window.named("style.specimen")).hashCode() != seen);
      assertArrayEquals(before, Files.readAllBytes(toml));
      window.key(KeyEvent.VK_ENTER);
      window.settled("Pim's balloons grow", shown -> widthOf(shown, "PIM") > 1.2 * pim);
      assertEquals(odda, widthOf(window.settled(), "elder"));
      List<String> now = Files.readAllLines(toml);
      assertEquals(1, linesThatDiffer(lines, now));
      assertTrue(now.contains("size = 1.4"), now::toString);
      window.key(KeyEvent.VK_ALT, KeyEvent.VK_R);
      window.settled("they are as they were", shown -> widthOf(shown, "PIM") == pim);
      assertArrayEquals(before, Files.readAllBytes(toml));
      assertFalse(window.ask(() -> window.named("style.revert").isEnabled()));
    }
  }

  @Test
  void aValueIsResetWithItsLineAndEscapeWritesNothing() throws Exception {
    Path series = sample();
    Path toml = series.resolve("series.toml");
    byte[] before = Files.readAllBytes(toml);
    try (OpenWindow window = open(series.resolve("ep01/script.txt"))) {
      goTo(window, "tiny");
      assertEquals("0.85", text(window, "style.size"));
      window.type("2");
      window.key(KeyEvent.VK_ESCAPE);
      assertEquals("0.85", text(window, "style.size"));
      window.key(KeyEvent.VK_TAB);
      assertArrayEquals(before, Files.readAllBytes(toml));
      window.waitUntil(
          "the reset button has the focus", () -> focused().equals("style.size.reset"));
      window.key(KeyEvent.VK_SPACE);
      window.settled(
          "Button speaks as large as others",
          shown -> shown.episode().style().voice("tiny").orElseThrow().size().isEmpty());
      String whole = new String(before, StandardCharsets.UTF_8);
      String after = whole.replaceFirst("(?s)(\\[voices.tiny\\]\n)size = 0.85\n", "$1");
      assertEquals(after, Files.readString(toml));
      assertEquals("1", text(window, "style.size"));
    }
  }

  @Test
  void aScriptOutsideASeriesShowsTheBuiltInStyleAndSaysHowToChangeIt() throws Exception {
    Path script = folder.resolve("alone").resolve("script.txt");
    Files.createDirectories(script.getParent());
    Files.writeString(script, "PANEL 1\n\nILSE: It turns.\n");
    try (OpenWindow window = open(script)) {
      window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_8);
      window.waitUntil("the page is there", () -> focused().equals("style.kind"));
      JTextArea remark = (JTextArea) window.named("style.remark");
      assertTrue(window.ask(() -> remark.getText().contains("Start a series")));
      assertFalse(window.ask(() -> window.named("style.size").isEnabled()));
      assertEquals("1", text(window, "style.size"));
    }
  }

  @Test
  void aProblemIsShownBelowItsValue() throws Exception {
    Path series = sample();
    Path toml = series.resolve("series.toml");
    Files.writeString(toml, Files.readString(toml).replace("size = 0.85\nline", "size = 99\nline"));
    try (OpenWindow window = open(series.resolve("ep01/script.txt"))) {
      goTo(window, "tiny");
      String problem = text(window, "style.size.problem");
      assertTrue(problem.startsWith("size in [voices.tiny] is 99; it must be a number"), problem);
    }
  }
}
