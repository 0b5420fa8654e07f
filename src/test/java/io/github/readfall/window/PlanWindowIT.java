package io.github.readfall.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.plan.EpisodePlanner;
import io.github.readfall.plan.Split;
import io.github.readfall.script.read.ReadScript;
import io.github.readfall.script.read.ScriptReader;
import java.awt.GraphicsEnvironment;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JSpinner;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An episode is planned and split in a real window. */
class PlanWindowIT {

  private final Path folder;
  private final Path episode;

  PlanWindowIT(@TempDir Path folder) throws Exception {
    this.folder = folder;
    Path series = folder.resolve("overdue-tide");
    episode = series.resolve("ep01");
    Files.createDirectories(episode);
    Path sample = Path.of("sample-scripts", "overdue-tide");
    Files.copy(sample.resolve("series.toml"), series.resolve("series.toml"));
    Files.copy(sample.resolve("ep01/script.txt"), episode.resolve("script.txt"));
  }

  @BeforeEach
  void aDisplayIsThere() {
    assumeFalse(GraphicsEnvironment.isHeadless(), "there is no display: the window was not tested");
  }

  private OpenWindow open() {
    return OpenWindow.with(folder.resolve("state"), episode.resolve("script.txt"));
  }

  private static void toPlan(OpenWindow window) {
    window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_7);
    JComponent overview = window.named("overview");
    window.waitUntil(
        "the overview has the keyboard",
        () ->
            KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner() == overview
                && overview.isShowing());
  }

  private static double top(OpenWindow window) {
    return window.ask(() -> window.window().work().strip().visible().topPx());
  }

  private static String said(OpenWindow window, String name) {
    JTextComponent text = (JTextComponent) window.named(name);
    return window.ask(text::getText);
  }

  private static void isSaid(OpenWindow window, String words) {
    window.waitUntil(words, () -> said(window, "plan.why").startsWith(words));
  }

  private static void isWorkedOut(OpenWindow window) {
    window.waitUntil(
        "the plan is computed", () -> window.window().planController().upToDate().isPresent());
  }

  private static void ask(OpenWindow window, int parts) {
    JSpinner count = (JSpinner) window.named("plan.count");
    window.run(() -> count.setValue(parts));
  }

  private static Split split(OpenWindow window) {
    var shown = window.settled();
    return EpisodePlanner.split(shown.galley().set(), shown.plan(), 2).orElseThrow();
  }

  @Test
  void theOverviewMovesTheStrip() {
    try (OpenWindow window = open()) {
      double heightPx = window.settled().plan().heightPx();
      toPlan(window);
      window.key(KeyEvent.VK_END);
      window.waitUntil(
          "the strip is at its end",
          () -> window.window().work().strip().visible().bottomPx() > heightPx - 20);
      double end = top(window);
      window.key(KeyEvent.VK_PAGE_UP);
      window.waitUntil(
          "it goes up", () -> window.window().work().strip().visible().topPx() < end - 500);
      window.key(KeyEvent.VK_HOME);
      window.waitUntil("it is at its top", () -> top(window) == 0);
      window.key(KeyEvent.VK_DOWN);
      window.waitUntil("it goes down", () -> top(window) > 0);
      window.click(window.named("overview"));
      window.waitUntil("a click goes there", () -> top(window) > heightPx / 4);
      String description =
          window.ask(
              () -> window.named("overview").getAccessibleContext().getAccessibleDescription());
      assertTrue(description.contains(Math.round(heightPx) + "\u00a0px"), description);
      assertFalse(description.contains("shows screens 0.0"), description);
    }
  }

  @Test
  void twoPartsAreShownListedAndWritten() throws Exception {
    try (OpenWindow window = open()) {
      window.settled();
      toPlan(window);
      isSaid(window, "No split needed");
      AbstractButton make = (AbstractButton) window.named("plan.make");
      assertFalse(window.ask(make::isEnabled));
      ask(window, 26);
      isSaid(window, "Too few panels for 26 parts");
      assertFalse(window.ask(make::isEnabled));
      ask(window, 2);
      Split split = split(window);
      JTable table = (JTable) window.named("plan.parts");
      window.waitUntil("both parts are listed", () -> table.getRowCount() == 2);
      for (int row = 0; row < 2; row++) {
        Split.Part part = split.parts().get(row);
        assertEquals(part.firstPanel() + "–" + part.lastPanel(), cell(window, table, row, 1));
        assertEquals(Long.toString(Math.round(part.heightPx())), cell(window, table, row, 2));
      }
      assertEquals(split.parts().get(1).reason(), said(window, "plan.why"));
      window.run(() -> table.setRowSelectionInterval(1, 1));
      window.waitUntil("the strip is at the second part", () -> top(window) > 10_000);

      window.run(() -> window.window().work().editor().goTo(1, 1));
      window.run(() -> window.window().work().editor().focusText());
      window.key(KeyEvent.VK_END);
      window.type(" again");
      window.settled();
      window.run(() -> window.window().work().strip().showFrom(0));
      window.type(".");
      window.settled();
      isWorkedOut(window);
      assertTrue(top(window) < 10_000, "what is chosen still is not chosen again");
      window.run(() -> make.doClick(0));
      isTold(window, "2 parts will be written");
      assertFalse(Files.exists(episode.resolveSibling("ep01a")), "it is only listed");
      assertEquals(List.of("ep01"), folders());
      window.click(window.named("action.Write them"));
      isTold(window, "2 parts were written");
      assertEquals(List.of("ep01", "ep01a", "ep01b"), folders());
      String whole = Files.readString(episode.resolve("script.txt"));
      assertTrue(whole.startsWith("Title: The Overdue Tide again.\n"), "it was saved before");
      assertEquals(split.parts().get(0).lastPanel(), panels("ep01a"));
      assertEquals(
          split.parts().get(1).lastPanel() - split.parts().get(0).lastPanel(), panels("ep01b"));
      assertTrue(read("ep01b").startsWith("Title: The Overdue Tide again.\nEpisode: 1b\n"));
      assertEquals(cues(whole), cues(read("ep01a")) + cues(read("ep01b")), "no line is lost");

      window.click(window.named("action.Open the first part"));
      window.waitUntil(
          "the first part is open",
          () ->
              window
                  .window()
                  .workplace()
                  .opened()
                  .orElseThrow()
                  .files()
                  .script()
                  .endsWith(Path.of("ep01a", "script.txt")));
      window.settled();
      window.waitUntil("it is one again", () -> window.window().work().plan().count() == 1);
    }
  }

  @Test
  void partsAreListedAgainAfterTheScriptHasChanged() throws Exception {
    try (OpenWindow window = open()) {
      window.settled();
      toPlan(window);
      ask(window, 2);
      isWorkedOut(window);
      window.run(() -> ((AbstractButton) window.named("plan.make")).doClick(0));
      isTold(window, "2 parts will be written");
      ask(window, 3);
      isWorkedOut(window);
      window.click(window.named("action.Write them"));
      isTold(window, "3 parts will be written");
      assertEquals(List.of("ep01"), folders());
    }
  }

  private static String cell(OpenWindow window, JTable table, int row, int column) {
    return window.ask(() -> String.valueOf(table.getValueAt(row, column)));
  }

  private static void isTold(OpenWindow window, String words) {
    window.waitUntil(
        words,
        () ->
            window.window().notices().notices().stream()
                .anyMatch(notice -> notice.sentence().contains(words)));
  }

  private List<String> folders() throws Exception {
    try (Stream<Path> inside = Files.list(episode.getParent())) {
      return inside
          .filter(Files::isDirectory)
          .map(path -> String.valueOf(path.getFileName()))
          .sorted()
          .toList();
    }
  }

  private String read(String part) throws Exception {
    return Files.readString(episode.resolveSibling(part).resolve("script.txt"));
  }

  private int panels(String part) throws Exception {
    return script(read(part)).script().panels().size();
  }

  private static int cues(String text) {
    return script(text).script().panels().stream().mapToInt(panel -> panel.cues().size()).sum();
  }

  private static ReadScript script(String text) {
    return new ScriptReader().read(text, HouseStyle.DEFAULT.keywords());
  }
}
