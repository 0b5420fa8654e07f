package io.github.readfall.strip.anchor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.geom.Box;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.script.Cue;
import io.github.readfall.script.Script;
import io.github.readfall.script.read.ScriptReader;
import io.github.readfall.strip.CueMark;
import io.github.readfall.strip.LaidBalloon;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.Parked;
import io.github.readfall.strip.Tale;
import io.github.readfall.strip.Tale.Line;
import io.github.readfall.strip.Tale.Scene;
import io.github.readfall.strip.json.LayoutReader;
import io.github.readfall.strip.json.LayoutWriter;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class AnchoringTest {

  private static final int ROUNDS = 12;

  static Stream<Tale> tales() {
    return Stream.iterate(1, seed -> seed + 1)
        .limit(ROUNDS)
        .map(seed -> new Tale(seed, 4 + 3 * seed));
  }

  @ParameterizedTest
  @MethodSource("tales")
  void theSameScriptChangesNothing(Tale tale) {
    Layout layout = tale.layout();
    assertEquals(new Anchored(layout, List.of()), Anchoring.of(layout, tale.script()));
  }

  @ParameterizedTest
  @MethodSource("tales")
  void aNewLineMovesNoOtherBalloon(Tale tale) {
    Layout layout = tale.layout();
    Scene scene = tale.anyScene(1);
    Line added = tale.newLine();
    scene.lines().add(scene.lines().size() / 2, added);
    Anchored now = Anchoring.of(layout, tale.script());
    mustKeep(tale, now, Set.of(added.tag()));
    assertEquals(Optional.empty(), tagOf(now, tale, added));
    assertEquals(List.of(), now.findings());
  }

  @ParameterizedTest
  @MethodSource("tales")
  void theBalloonOfALineThatGoesIsParked(Tale tale) {
    Layout layout = tale.layout();
    Scene scene = tale.anyScene(1);
    Line gone = tale.any(Tale.longLines(scene));
    int at = scene.lines().indexOf(gone);
    scene.lines().remove(at);
    Anchored now = Anchoring.of(layout, tale.script());
    mustKeep(tale, now, Set.of());
    assertEquals(List.of((double) gone.tag()), now.parked().stream().map(b -> left(b)).toList());
    assertEquals(List.of("layout/cue-gone"), rules(now));

    scene.lines().add(at, gone);
    Anchored back = Anchoring.of(now.layout(), tale.script());
    assertEquals(new Anchored(layout, List.of()), back);
  }

  @ParameterizedTest
  @MethodSource("tales")
  void aRewordedLineKeepsItsPlace(Tale tale) {
    Layout layout = tale.layout();
    Scene scene = tale.anyScene(1);
    Line old = tale.any(Tale.longLines(scene));
    String reworded = old.text().replaceFirst(" \\w+ ", " otherwise ");
    replace(scene, old, new Line(old.tag(), old.speaker(), reworded));
    Anchored now = Anchoring.of(layout, tale.script());
    mustKeep(tale, now, Set.of());
    assertEquals(List.of(), now.findings());
  }

  @ParameterizedTest
  @MethodSource("tales")
  void aLineThatIsWrittenAnewKeepsItsPlaceBetweenItsNeighbours(Tale tale) {
    Layout layout = tale.layout();
    Scene scene = tale.anyScene(1);
    Line old = tale.any(scene.lines());
    replace(scene, old, new Line(old.tag(), old.speaker(), "Zyx! Qwv, jkz; zzz."));
    Anchored now = Anchoring.of(layout, tale.script());
    mustKeep(tale, now, Set.of());
    assertEquals(List.of(), now.findings());
  }

  @ParameterizedTest
  @MethodSource("tales")
  void theLargerPartOfALineCutInTwoKeepsThePlace(Tale tale) {
    Layout layout = tale.layout();
    Scene scene = tale.anyScene(1);
    Line whole = tale.any(Tale.longLines(scene));
    int at = whole.text().indexOf(' ', whole.text().length() * 2 / 3);
    int cut = at < 0 ? whole.text().lastIndexOf(' ') : at;
    Line larger = new Line(whole.tag(), whole.speaker(), whole.text().substring(0, cut));
    Line rest = new Line(-1, whole.speaker(), whole.text().substring(cut + 1));
    int index = scene.lines().indexOf(whole);
    scene.lines().set(index, larger);
    scene.lines().add(index + 1, rest);
    mustKeep(tale, Anchoring.of(layout, tale.script()), Set.of(-1));
  }

  @ParameterizedTest
  @MethodSource("tales")
  void linesThatChangePlacesKeepTheirBalloons(Tale tale) {
    Layout layout = tale.layout();
    Scene scene = tale.anyScene(2);
    int at = Math.max(0, scene.lines().indexOf(Tale.longLines(scene).get(0)) - 1);
    Collections.swap(scene.lines(), at, at + 1);
    Anchored now = Anchoring.of(layout, tale.script());
    mustKeep(tale, now, Set.of());
    assertEquals(List.of(), now.findings());
  }

  @ParameterizedTest
  @MethodSource("tales")
  void aLineThatGoesPastAnotherAndIsRewordedKeepsItsPlace(Tale tale) {
    Layout layout = tale.layout();
    Scene scene = tale.anyScene(2);
    Line first = Tale.longLines(scene).get(0);
    Line last = Tale.longLines(scene).get(1);
    scene.lines().removeAll(List.of(first, last));
    String reworded = first.text().replace('.', '!');
    scene.lines().addAll(List.of(last, new Line(first.tag(), first.speaker(), reworded)));
    Anchored now = Anchoring.of(layout, tale.script());
    mustKeep(tale, now, Set.of());
    assertEquals(List.of(), now.findings());
  }

  @ParameterizedTest
  @MethodSource("tales")
  void panelsThatChangePlacesTakeTheirBalloonsAlong(Tale tale) {
    Layout layout = tale.layout();
    int a = tale.scenes.indexOf(tale.anyScene(1));
    int b = tale.scenes.indexOf(tale.anyScene(1));
    Collections.swap(tale.scenes, a, b);
    Anchored now = Anchoring.of(layout, tale.script());
    mustKeep(tale, now, Set.of());
    assertEquals(List.of(), now.findings());
  }

  @ParameterizedTest
  @MethodSource("tales")
  void whoeverIsRenamedKeepsAllPlaces(Tale tale) {
    Layout layout = tale.layout();
    for (Scene scene : tale.scenes) {
      scene
          .lines()
          .replaceAll(
              line ->
                  line.speaker().equals("ILSE")
                      ? new Line(line.tag(), "MARGO", line.text())
                      : line);
    }
    Anchored now = Anchoring.of(layout, tale.script());
    mustKeep(tale, now, Set.of());
    assertEquals(List.of(), now.findings());
    assertTrue(now.layout().mouths().stream().allMatch(mouth -> mouth.speaker().equals("MARGO")));
  }

  @ParameterizedTest
  @MethodSource("tales")
  void aNewPanelMovesNoOther(Tale tale) {
    Layout layout = tale.layout();
    Scene added = new Scene(-1, "insert", new ArrayList<>(List.of(newLine(tale), newLine(tale))));
    tale.scenes.add(tale.scenes.size() / 2, added);
    Anchored now = Anchoring.of(layout, tale.script());
    mustKeep(tale, now, Set.of(-1));
    assertEquals(List.of("layout/panel-missing"), rules(now));
  }

  private static Line newLine(Tale tale) {
    return new Line(-1, "MIEKE", tale.sentence());
  }

  @ParameterizedTest
  @MethodSource("tales")
  void aPanelThatGoesIsParkedAndComesBack(Tale tale) {
    Layout layout = tale.layout();
    Scene gone = tale.anyScene(2);
    int at = tale.scenes.indexOf(gone);
    tale.scenes.remove(at);
    Anchored now = Anchoring.of(layout, tale.script());
    mustKeep(tale, now, Set.of());
    assertEquals(
        List.of(Tale.panelBox(gone.tag())),
        now.layout().parked().panels().stream().map(PanelBox::box).toList());
    assertEquals(gone.lines().size(), now.parked().size());
    assertEquals(1, now.layout().parked().mouths().size());

    tale.scenes.add(at, gone);
    Anchored back = Anchoring.of(now.layout(), tale.script());
    mustKeep(tale, back, Set.of());
    assertEquals(Parked.NONE, back.layout().parked());
    assertEquals(Set.copyOf(layout.mouths()), Set.copyOf(back.layout().mouths()));
  }

  @ParameterizedTest
  @MethodSource("tales")
  void manyChangesOneAfterTheOtherLoseNothing(Tale tale) {
    Layout layout = tale.layout();
    SplittableRandom random = new SplittableRandom(tale.lines().size());
    Set<Integer> known = new HashSet<>();
    tale.lines().forEach(line -> known.add(line.tag()));
    for (int i = 0; i < 25; i++) {
      Scene scene = tale.anyScene(1);
      Line line = tale.any(Tale.longLines(scene));
      int at = scene.lines().indexOf(line);
      switch (random.nextInt(3)) {
        case 0 -> scene.lines().add(at, tale.newLine());
        case 1 -> scene.lines().set(at, new Line(line.tag(), line.speaker(), line.text() + " So."));
        default -> Collections.swap(scene.lines(), at, random.nextInt(scene.lines().size()));
      }
      layout = Anchoring.of(layout, tale.script()).layout();
    }
    Anchored now = Anchoring.of(layout, tale.script());
    Set<Integer> added = new HashSet<>();
    tale.lines().forEach(line -> added.add(line.tag()));
    added.removeAll(known);
    mustKeep(tale, now, added);
    assertEquals(List.of(), now.parked());
  }

  /** Every line that is not new has its balloon, or that of a twin in the same panel. */
  private static void mustKeep(Tale tale, Anchored now, Set<Integer> added) {
    Map<Integer, Integer> tags = tags(now, tale);
    for (Scene scene : tale.scenes) {
      for (Line line : scene.lines()) {
        if (!added.contains(line.tag())) {
          int tag = tags.getOrDefault(line.tag(), 0);
          boolean twin =
              scene.lines().stream().anyMatch(other -> other.tag() == tag && isTwin(other, line));
          assertTrue(twin, line + " has the balloon " + tag + " in " + scene);
        }
      }
    }
    for (int i = 0; i < tale.scenes.size(); i++) {
      Scene scene = tale.scenes.get(i);
      if (!added.contains(scene.tag())) {
        Optional<Box> box = now.layout().panel(i + 1).map(PanelBox::box);
        if (!isBareAndSilent(scene)) {
          assertEquals(Optional.of(Tale.panelBox(scene.tag())), box, scene.toString());
        }
      }
    }
  }

  private static boolean isTwin(Line a, Line b) {
    return a.speaker().equals(b.speaker()) && a.text().equals(b.text());
  }

  /** Nothing but its place tells such a panel from another of its kind beside it. */
  private static boolean isBareAndSilent(Scene scene) {
    return scene.lines().isEmpty();
  }

  private static Optional<Integer> tagOf(Anchored now, Tale tale, Line line) {
    return Optional.ofNullable(tags(now, tale).get(line.tag()));
  }

  /** Whose balloon each line has. */
  private static Map<Integer, Integer> tags(Anchored now, Tale tale) {
    Map<String, LaidBalloon> byId = new HashMap<>();
    now.layout().balloons().forEach(balloon -> byId.put(balloon.id(), balloon));
    Map<Integer, Integer> tags = new HashMap<>();
    List<Line> lines = tale.lines();
    List<Cue> cues = tale.script().cues();
    for (int i = 0; i < lines.size(); i++) {
      Cue cue = cues.get(i);
      int tag = lines.get(i).tag();
      Optional.ofNullable(byId.get(cue.id()))
          .ifPresent(
              balloon -> {
                assertEquals(Optional.of(CueMark.of(cue)), balloon.cue());
                tags.put(tag, (int) left(balloon));
              });
    }
    return tags;
  }

  private static double left(LaidBalloon balloon) {
    return balloon.box().map(Box::x).orElse(0.0);
  }

  private static void replace(Scene scene, Line old, Line now) {
    scene.lines().set(scene.lines().indexOf(old), now);
  }

  private static List<String> rules(Anchored now) {
    return now.findings().stream().map(Finding::rule).toList();
  }

  @Test
  void twoHundredIdenticalLinesAreNotScrambled() {
    Tale tale = new Tale(1, 0);
    for (int panel = 0; panel < 50; panel++) {
      Scene scene = tale.newScene(0);
      for (int i = 0; i < 4; i++) {
        scene.lines().add(new Line(tale.newLine().tag(), "ILSE", "No."));
      }
      tale.scenes.add(new Scene(scene.tag(), "", scene.lines()));
    }
    Layout layout = tale.layout();
    tale.scenes.get(20).lines().remove(1);
    Anchored fewer = Anchoring.of(layout, tale.script());
    mustKeep(tale, anchoredBut(fewer, 21), tagsOf(tale.scenes.get(20)));
    assertEquals(1, fewer.parked().size());
    assertEquals(List.of("layout/cue-twice"), rules(fewer));

    tale.scenes.get(20).lines().add(1, new Line(-1, "ILSE", "No."));
    tale.scenes.get(30).lines().add(2, new Line(-2, "ILSE", "No."));
    Anchored more = Anchoring.of(layout, tale.script());
    Set<Integer> open = new HashSet<>(tagsOf(tale.scenes.get(20)));
    open.addAll(tagsOf(tale.scenes.get(30)));
    mustKeep(tale, more, open);
    List<Double> lefts = more.layout().balloons().stream().map(AnchoringTest::left).toList();
    assertEquals(lefts.stream().sorted().toList(), lefts, "the balloons changed places");
  }

  private static Anchored anchoredBut(Anchored anchored, int panel) {
    assertEquals(3, anchored.layout().balloons().stream().filter(b -> panelOf(b) == panel).count());
    return anchored;
  }

  private static int panelOf(LaidBalloon balloon) {
    return balloon.cue().orElseThrow().panel();
  }

  private static Set<Integer> tagsOf(Scene scene) {
    Set<Integer> tags = new HashSet<>();
    scene.lines().forEach(line -> tags.add(line.tag()));
    return tags;
  }

  @Test
  void fifteenHundredCuesTakeNoTime() {
    Tale tale = new Tale(5, 600);
    assertTrue(tale.lines().size() > 1400);
    Layout layout = tale.layout();
    for (int i = 0; i < 40; i++) {
      Scene scene = tale.anyScene(1);
      scene.lines().add(0, tale.newLine());
      Line old = tale.any(Tale.longLines(scene));
      replace(scene, old, new Line(old.tag(), old.speaker(), old.text() + " So."));
    }
    Script script = tale.script();
    assertTimeout(Duration.ofSeconds(20), () -> Anchoring.of(layout, script));
  }

  private static final String HAND =
      """
      {"strip": {"widthPx": 1600, "heightPx": 5000},
       "panels": [{"panel": 1, "box": [0, 0, 1600, 2000]}, {"panel": 2, "box": [0, 2100, 1600, 2000]}],
       "balloons": [{"id": "p2-1", "box": [10, 2200, 300, 200]},
                    {"id": "p1-2", "box": [10, 20, 300, 200], "pinned": true},
                    {"id": "p9-9", "box": [50, 60, 300, 200]}]}
      """;

  @Test
  void handWrittenBalloonsGoByTheirIds() {
    Script script = script("PANEL\nILSE: One.\n\nILSE: Two.\n\nPANEL\nILSE: Three.\n");
    Layout layout = new LayoutReader().read(HAND).layout().orElseThrow();
    Anchored now = Anchoring.of(layout, script);
    List<String> texts =
        now.layout().balloons().stream().map(b -> b.cue().orElseThrow().text()).toList();
    assertEquals(List.of("Two.", "Three."), texts);
    assertEquals(List.of("layout/cue-gone"), rules(now));
    assertEquals("p9-9", now.parked().get(0).id());
  }

  @Test
  void aLineThatGoesToAnotherPanelIsPlacedAnewUnlessItIsPinned() {
    Script before =
        script(
            """
            PANEL one
            ILSE: It is counting again.

            ILSE: Two of them now.

            PANEL two
            WOUTER: The wheel has not turned.
            """);
    Layout layout =
        Anchoring.of(new LayoutReader().read(HAND).layout().orElseThrow(), before).layout();
    String after =
        """
        PANEL one
        ILSE: It is counting again.

        PANEL two
        WOUTER: The wheel has not turned.

        ILSE: Two of them now.
        """;
    Anchored pinned = Anchoring.of(layout, script(after));
    assertEquals(Optional.of(new Box(10, 20, 300, 200)), box(pinned, "p2-2"));
    assertEquals(List.of(), rules(pinned));
    Layout loose =
        new LayoutReader()
            .read(LayoutWriter.write(layout).replace(", \"pinned\": true", ""))
            .layout()
            .orElseThrow();
    Anchored moved = Anchoring.of(loose, script(after));
    assertEquals(Optional.empty(), box(moved, "p2-2"));
    assertEquals(List.of("layout/cue-moved"), rules(moved));
  }

  private static Optional<Box> box(Anchored now, String id) {
    return now.layout().balloons().stream()
        .filter(balloon -> balloon.id().equals(id))
        .findFirst()
        .orElseThrow()
        .box();
  }

  private static final String THREE =
      """
      {"strip": {"widthPx": 1600, "heightPx": 5000},
       "panels": [{"panel": 1, "box": [0, 0, 1600, 900]}, {"panel": 2, "box": [0, 1000, 1600, 900]},
                  {"panel": 3, "box": [0, 2000, 1600, 900]}],
       "balloons": [{"id": "p1-1", "box": [1, 20, 3, 2]}, {"id": "p2-1", "box": [2, 950, 3, 2]},
                    {"id": "p3-1", "box": [3, 2020, 3, 2]}]}
      """;

  private static Layout three(String script) {
    Layout layout = new LayoutReader().read(THREE).layout().orElseThrow();
    return Anchoring.of(layout, script(script)).layout();
  }

  @Test
  void ofEqualLinesTheOneInThePanelIsMeant() {
    Layout layout =
        three(
            """
            PANEL a
            OLD: Who is there, then?

            PANEL b
            ILSE: No.

            PANEL c
            ILSE: It turns again.
            """);
    String after =
        """
        PANEL a
        ILSE: No.

        PANEL b
        OLD: But it is.

        ILSE: No.

        PANEL c
        ILSE: It turns now.
        """;
    Anchored now = Anchoring.of(layout, script(after));
    assertEquals(Optional.of(new Box(2, 950, 3, 2)), box(now, "p2-2"));
    assertEquals(Optional.of(new Box(3, 2020, 3, 2)), box(now, "p3-1"));
    assertEquals(List.of(1.0), now.parked().stream().map(AnchoringTest::left).toList());
  }

  @Test
  void aParkedBalloonInAGutterIsKnownByItsPanelHoweverThatIsNumbered() {
    String head = "PANEL a\nILSE: One.\n\n";
    String line = "CAPTION: Then came the tide.\n\n";
    String tail = "PANEL c\nILSE: Three.\n";
    Layout layout = three(head + "PANEL b\n" + line + tail);
    String first = "PANEL new\nILSE: Nought.\n\n";
    Anchored without = Anchoring.of(layout, script(first + head + "PANEL b\n\n" + tail));
    assertEquals(3, without.parked().get(0).cue().orElseThrow().panel());
    Anchored back =
        Anchoring.of(without.layout(), script(first + head + "PANEL b\n" + line + tail));
    assertEquals(Optional.of(new Box(2, 950, 3, 2)), box(back, "p3-1"));
  }

  @Test
  void silentPanelsGoByTheirHeadings() {
    Script before = script("PANEL rain\nA\n\nPANEL the wheel\nB\n\nPANEL close-up\nC\n");
    Layout layout =
        Layout.of(
                100,
                900,
                List.of(
                    new PanelBox(1, new Box(0, 100, 9, 9)),
                    new PanelBox(2, new Box(0, 200, 9, 9)),
                    new PanelBox(3, new Box(0, 300, 9, 9))))
            .withHeadings(before);
    Script after = script("PANEL close-up\nC\n\nPANEL new\nX\n\nPANEL rain\nA\n\nPANEL wheel\n");
    Anchored now = Anchoring.of(layout, after);
    List<String> places =
        now.layout().panels().stream().map(p -> p.panel() + " " + p.box().y()).toList();
    assertEquals(List.of("1 300.0", "3 100.0", "4 200.0"), places);
    assertEquals(List.of("layout/panel-missing"), rules(now));
    assertEquals(2, now.findings().get(0).where().panel().orElseThrow());
  }

  @Test
  void whereNothingIsKnownANumberDecides() {
    Layout layout = Layout.of(100, 900, List.of(new PanelBox(2, new Box(0, 200, 9, 9))));
    Script script = script("PANEL\nILSE: One.\n\nPANEL\nILSE: Two.\n\nPANEL\nILSE: Three.\n");
    Anchored now = Anchoring.of(layout, script);
    assertEquals(2, now.layout().panels().get(0).panel());
    assertEquals(List.of("layout/panel-missing", "layout/panel-missing"), rules(now));
  }

  private static Script script(String text) {
    return new ScriptReader().read(text, HouseStyle.DEFAULT.keywords()).script();
  }
}
