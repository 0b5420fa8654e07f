package io.github.readfall.window;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.geom.Box;
import io.github.readfall.strip.edits.StripItem;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.window.model.EpisodeSnapshot;
import io.github.readfall.window.model.Selection;
import java.awt.GraphicsEnvironment;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleState;
import javax.swing.JComponent;
import javax.swing.JList;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Work on the strip in a real window with a real mouse and real keys. */
class StripWindowIT {

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

  /** Written by hand, so not in the program's format. */
  private static final String LAYOUT =
      """
      {"readfall-layout": 1,   "strip": {"widthPx": 1600, "heightPx": 3000},
       "panels": [{"panel": 1, "box": [100, 100, 1400, 1200]},
                  {"panel": 2, "box": [100, 1500, 1400, 1200]}],
       "balloons": [{"id": "p1-1", "box": [200, 160, 420, 240]},
                    {"id": "p1-2", "box": [900, 700, 420, 240]}]}
      """;

  private final Path folder;
  private final Path script;
  private final Path layout;

  StripWindowIT(@TempDir Path folder) throws Exception {
    this.folder = folder;
    script = folder.resolve("ebb").resolve("script.txt");
    layout = script.resolveSibling("layout.json");
    Files.createDirectories(script.getParent());
    Files.writeString(script, SCRIPT);
    Files.writeString(layout, LAYOUT);
  }

  @BeforeEach
  void aDisplayIsThere() {
    assumeFalse(GraphicsEnvironment.isHeadless(), "there is no display: the window was not tested");
  }

  private OpenWindow open() {
    OpenWindow window = OpenWindow.with(folder.resolve("state"), script);
    window.settled();
    return window;
  }

  private static Box box(EpisodeSnapshot shown, String id) {
    return shown.galley().balloons().stream()
        .filter(balloon -> balloon.id().equals(id))
        .map(PlacedBalloon::box)
        .findFirst()
        .orElseThrow();
  }

  private static JComponent strip(OpenWindow window) {
    return window.named("canvas.strip");
  }

  /** The middle of a box of the strip, in the window. */
  private static Point middle(OpenWindow window, Box box) {
    Rectangle there = window.ask(() -> window.window().work().strip().boundsOf(box));
    return new Point((int) there.getCenterX(), (int) there.getCenterY());
  }

  private static List<String> rules(EpisodeSnapshot shown) {
    return shown.findings().stream().map(Finding::rule).toList();
  }

  private static void saveAll(OpenWindow window) {
    window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
    window.waitUntil("it is saved", () -> !window.window().workplace().hasUnsaved());
  }

  @Test
  void aBalloonDraggedOntoAnotherIsFoundFixedAndUndoneToTheSameBytes() throws Exception {
    byte[] before = Files.readAllBytes(layout);
    try (OpenWindow window = open()) {
      EpisodeSnapshot first = window.settled();
      assertFalse(rules(first).contains("space/overlap"), () -> "" + rules(first));
      Point from = middle(window, box(first, "p1-2"));
      Point to = middle(window, box(first, "p1-1"));
      window.drag(strip(window), from, new Point(to.x + 20, to.y + 12));
      EpisodeSnapshot over =
          window.settled("the overlap is found", s -> rules(s).contains("space/overlap"));
      assertEquals(
          Set.of(new StripItem.Balloon("p1-2")),
          window.ask(window.window().stripController().chosen()::items));

      saveAll(window);
      assertTrue(Files.readString(layout).contains("\"pinned\": true"));
      assertArrayEquals(before, Files.readAllBytes(layout.resolveSibling("layout.previous.json")));

      choose(window, over, "space/overlap");
      window.click(window.named("finding.fix"));
      EpisodeSnapshot mended =
          window.settled("it is mended", s -> !rules(s).contains("space/overlap"));
      assertEquals(box(over, "p1-2"), box(mended, "p1-2"), "what is pinned stays");

      for (int step = 0; step < 2; step++) {
        window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
      }
      assertEquals(box(first, "p1-2"), box(window.settled(), "p1-2"));
      saveAll(window);
      assertArrayEquals(before, Files.readAllBytes(layout));
      assertArrayEquals(SCRIPT.getBytes(StandardCharsets.UTF_8), Files.readAllBytes(script));
    }
  }

  /** The lines of a balloon, as they are set. */
  private static int lines(EpisodeSnapshot shown, String id) {
    return shown.galley().balloons().stream()
        .filter(balloon -> balloon.id().equals(id))
        .mapToInt(balloon -> balloon.set().lines().size())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aBalloonIsHadInAnotherNumberOfLinesAndUndone() throws Exception {
    byte[] before = Files.readAllBytes(layout);
    try (OpenWindow window = open()) {
      EpisodeSnapshot first = window.settled();
      int usual = lines(first, "p1-2");
      int other = usual == 1 ? 2 : 1;
      Selection chosen = window.window().stripController().chosen();
      window.run(() -> chosen.select(Set.of(new StripItem.Balloon("p1-2"))));
      window.fill("menu.lines");
      window.choose("lines." + other);
      EpisodeSnapshot changed =
          window.settled("it has other lines", s -> lines(s, "p1-2") == other);
      assertEquals(box(first, "p1-2").centre().x(), box(changed, "p1-2").centre().x(), 0.1);
      saveAll(window);
      assertTrue(Files.readString(layout).contains("\"lines\": " + other));
      window.fill("menu.lines");
      window.choose("lines.best");
      window.settled("it has the usual lines", s -> lines(s, "p1-2") == usual);
      window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
      window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
      window.settled("it is as before", s -> box(s, "p1-2").equals(box(first, "p1-2")));
      saveAll(window);
      assertArrayEquals(before, Files.readAllBytes(layout));
    }
  }

  private static void choose(OpenWindow window, EpisodeSnapshot shown, String rule) {
    window.run(
        () -> {
          JList<Finding> list = window.window().work().findings().shownList();
          Finding finding =
              shown.findings().stream()
                  .filter(f -> f.rule().equals(rule))
                  .findFirst()
                  .orElseThrow();
          list.setSelectedValue(finding, true);
        });
  }

  @Test
  void theStripIsWorkedOnByKeysAlone() {
    try (OpenWindow window = open()) {
      Box before = box(window.settled(), "p1-1");
      window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_2);
      window.key(KeyEvent.VK_F7);
      window.key(KeyEvent.VK_F7);
      assertEquals(
          Set.of(new StripItem.Balloon("p1-1")),
          window.ask(window.window().stripController().chosen()::items));
      window.key(KeyEvent.VK_RIGHT);
      window.key(KeyEvent.VK_SHIFT, KeyEvent.VK_DOWN);
      assertEquals(before.movedBy(4, 40), box(window.settled(), "p1-1"));
      window.key(KeyEvent.VK_ALT, KeyEvent.VK_RIGHT);
      assertTrue(box(window.settled(), "p1-1").width() > before.width());
      window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
      window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
      assertEquals(before, box(window.settled(), "p1-1"));
      window.key(KeyEvent.VK_ESCAPE);
      assertEquals(Set.of(), window.ask(window.window().stripController().chosen()::items));
    }
  }

  @Test
  void aFindingIsIgnoredWithAReasonAndNoLongerIgnored() throws Exception {
    Path ignored = script.resolveSibling("ignored.toml");
    Files.writeString(layout, LAYOUT.replace("[900, 700, 420, 240]", "[300, 220, 420, 240]"));
    try (OpenWindow window = open()) {
      EpisodeSnapshot shown =
          window.settled("it is found", s -> rules(s).contains("space/overlap"));
      choose(window, shown, "space/overlap");
      window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT, KeyEvent.VK_M);
      window.type("they talk over each other");
      window.key(KeyEvent.VK_ENTER);
      EpisodeSnapshot set =
          window.settled(
              "it is ignored", s -> s.findings().stream().anyMatch(f -> f.reason().isPresent()));
      assertTrue(Files.readString(ignored).contains("they talk over each other"));
      choose(window, set, "space/overlap");
      window.click(window.named("finding.stopIgnoring"));
      window.settled("it is looked at again", s -> s.findings().stream().allMatch(Finding::isOpen));
      assertFalse(Files.readString(ignored).contains("they talk over"));
    }
  }

  private static List<AccessibleContext> children(OpenWindow window) {
    return window.ask(
        () -> {
          AccessibleContext strip = strip(window).getAccessibleContext();
          return IntStream.range(0, strip.getAccessibleChildrenCount())
              .mapToObj(i -> strip.getAccessibleChild(i).getAccessibleContext())
              .toList();
        });
  }

  @Test
  void screenReadersReachEveryBalloonOfTheStrip() {
    try (OpenWindow window = open()) {
      EpisodeSnapshot shown = window.settled();
      window.run(
          () ->
              window
                  .window()
                  .stripController()
                  .chosen()
                  .select(Set.of(new StripItem.Balloon("p1-2"))));
      List<AccessibleContext> children = children(window);
      assertEquals(
          List.of("panel 1", "Ilse: It turns.", "Wouter: Leave it be.", "panel 2", "Ilse: Listen."),
          children.stream().map(AccessibleContext::getAccessibleName).toList());
      AccessibleContext second = children.get(2);
      assertTrue(second.getAccessibleDescription().startsWith("Wouter's balloon in panel 1"));
      assertTrue(second.getAccessibleStateSet().contains(AccessibleState.SELECTED));
      assertFalse(children.get(1).getAccessibleStateSet().contains(AccessibleState.SELECTED));
      Rectangle there =
          window.ask(() -> window.window().work().strip().boundsOf(box(shown, "p1-2")));
      assertEquals(there, second.getAccessibleComponent().getBounds());
      assertEquals(strip(window), second.getAccessibleParent());
    }
  }

  /** Roles of components that a person can operate. */
  private static final Set<AccessibleRole> WORKED_WITH =
      Set.of(
          AccessibleRole.PUSH_BUTTON,
          AccessibleRole.TOGGLE_BUTTON,
          AccessibleRole.CHECK_BOX,
          AccessibleRole.COMBO_BOX,
          AccessibleRole.SPIN_BOX,
          AccessibleRole.SLIDER,
          AccessibleRole.TEXT,
          AccessibleRole.LIST,
          AccessibleRole.TABLE,
          AccessibleRole.MENU,
          AccessibleRole.MENU_ITEM,
          AccessibleRole.PAGE_TAB,
          AccessibleRole.PAGE_TAB_LIST,
          AccessibleRole.CANVAS);

  @Test
  void everythingInTheAccessibleTreeHasANameAndARole() {
    try (OpenWindow window = open()) {
      List<String> met = new ArrayList<>();
      List<String> nameless = new ArrayList<>();
      for (String page : List.of("phone", "plan", "style")) {
        window.run(() -> window.window().work().side().show(page));
        window.run(
            () -> walk(window.window().frame().getAccessibleContext(), "window", met, nameless));
      }
      assertTrue(met.size() > 120, "only " + met.size() + " are in the tree");
      assertEquals(List.of(), nameless);
    }
  }

  private static void walk(
      AccessibleContext context, String way, List<String> met, List<String> nameless) {
    AccessibleRole role = context.getAccessibleRole();
    String here = way + " > " + role + " " + context.getAccessibleName();
    String name = context.getAccessibleName();
    if (WORKED_WITH.contains(role)) {
      met.add(here);
      boolean isPartOfAnother = way.contains("scroll bar") || way.contains("> text");
      boolean shows = context.getAccessibleStateSet().contains(AccessibleState.SHOWING);
      if (shows && !isPartOfAnother && (name == null || name.isBlank())) {
        nameless.add(here.substring(Math.max(0, here.length() - 160)));
      }
    }
    for (int i = 0; i < Math.min(60, context.getAccessibleChildrenCount()); i++) {
      Accessible child = context.getAccessibleChild(i);
      if (child != null && child.getAccessibleContext() != null) {
        walk(child.getAccessibleContext(), here, met, nameless);
      }
    }
  }
}
