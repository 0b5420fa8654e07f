package io.github.readfall.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.Endurance;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.job.Proofer;
import io.github.readfall.job.StripProof;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.Surroundings;
import io.github.readfall.strip.Extra;
import io.github.readfall.strip.KeepClear;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.edits.Alignment;
import io.github.readfall.strip.edits.StripEdit;
import io.github.readfall.strip.edits.StripItem;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.strip.gesture.ElementPlaces;
import io.github.readfall.strip.gesture.Gesture;
import io.github.readfall.strip.gesture.Grip;
import io.github.readfall.strip.json.LayoutWriter;
import io.github.readfall.type.balloon.ShapeKind;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.font.OpenFaces;
import io.github.readfall.window.canvas.StripScene;
import io.github.readfall.window.model.EpisodeModel;
import io.github.readfall.window.model.EpisodeSnapshot;
import io.github.readfall.window.model.LayoutModel;
import io.github.readfall.window.model.LayoutText;
import io.github.readfall.window.model.ModelThreads;
import io.github.readfall.window.script.ScriptEditor;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Edits of script and strip in any order end with the same strip as a fresh computation. */
class StripWalkTest {

  private static final String SCRIPT =
      """
      Title: Ebb
      Cast: Ilse, Wouter

      PANEL 1

      ILSE: It turns.
      WOUTER: Leave it be.

      PANEL 2

      CAPTION: Later.
      ILSE (whisper): Listen to it.
      """;

  /** Few lines, so that the strip stays small and a step quick. */
  private static final int MOST_LINES = 20;

  private static final List<String> WORDS = List.of("water", "wheel", "again", "three o'clock");

  private final Proofer proofer;
  private final Surroundings bare;
  private final EpisodeModel model;
  private final ScriptEditor editor = new ScriptEditor();
  private final LayoutModel work;
  private final List<String> refused = new ArrayList<>();

  StripWalkTest() throws Exception {
    FontShelf faces = OpenFaces.shelf();
    proofer = new Proofer(faces, () -> 0);
    bare =
        Surroundings.read(
            new EpisodeFiles(Path.of("nowhere", "script.txt"), Optional.empty()), faces);
    model = new EpisodeModel(proofer, ModelThreads.none(), shown -> StripScene.empty(1));
    work = new LayoutModel(model, new SharedUndo(editor), refused::add);
    editor.onTextChange(model::setText);
    editor.open(SCRIPT);
    work.open("", Optional.empty());
    model.open(bare, SCRIPT);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2})
  void editsUndosAndRedosInAnyOrderEndInTheStateAFreshComputationGives(long seed) {
    int steps = Endurance.rounds(100, 1_000);
    Random random = new Random(seed);
    int changes = 0;
    for (int i = 0; i < steps; i++) {
      String before = editor.text() + work.text();
      step(random);
      changes += before.equals(editor.text() + work.text()) ? 0 : 1;
    }
    assertTrue(changes > steps / 2, "only " + changes + " steps did anything");
    assertEquals(List.of(), refused);
    String script = editor.text();
    String layout = work.text();
    assertFresh();

    while (editor.canUndo()) {
      editor.undo();
    }
    assertEquals(SCRIPT, editor.text());
    assertEquals("", work.text());
    assertFresh();

    while (editor.canRedo()) {
      editor.redo();
    }
    assertEquals(script, editor.text());
    assertEquals(layout, work.text());
    assertFresh();
  }

  private void assertFresh() {
    StripProof fresh =
        proofer.check(bare.withLaid(LayoutText.of(work.text()).read()).with(editor.text()));
    StripProof here = model.proof().orElseThrow();
    assertEquals(LayoutWriter.write(fresh.layout()), LayoutWriter.write(here.layout()));
    assertEquals(boxes(fresh), boxes(here));
    assertEquals(messages(fresh.findings()), messages(here.findings()));
    assertEquals(editor.text(), model.shown().map(EpisodeSnapshot::text).orElseThrow());
  }

  private static Map<String, Box> boxes(StripProof proof) {
    Map<String, Box> boxes = new LinkedHashMap<>();
    for (PlacedBalloon balloon : proof.galley().balloons()) {
      boxes.put(balloon.id() + balloon.cue().text().raw(), balloon.reach());
    }
    return boxes;
  }

  private static List<String> messages(List<Finding> findings) {
    return findings.stream().map(f -> f.rule() + f.where() + f.message() + f.fix()).toList();
  }

  private void step(Random random) {
    switch (random.nextInt(10)) {
      case 0, 1, 2 -> write(random);
      case 3, 4, 5 -> pull(random);
      case 6 -> look(random);
      case 7 -> mark(random);
      case 8 -> editor.undo();
      default -> {
        if (editor.canRedo()) {
          editor.redo();
        } else {
          editor.undo();
        }
      }
    }
  }

  private void write(Random random) {
    List<String> lines = new ArrayList<>(editor.text().lines().toList());
    int at = 3 + random.nextInt(lines.size() - 3);
    String word = any(WORDS, random);
    boolean isSaid = lines.get(at).contains(": ");
    switch (random.nextInt(5)) {
      case 0 -> {
        if (lines.size() < MOST_LINES) {
          lines.add(at + 1, "WOUTER: The " + word + ".");
        }
      }
      case 1 -> {
        if (lines.size() < MOST_LINES) {
          lines.add("PANEL " + (lines.size() + 1) + "\nILSE: " + word + "!");
        }
      }
      case 2 -> {
        if (isSaid && lines.size() > 12) {
          lines.remove(at);
        }
      }
      default -> {
        if (isSaid) {
          lines.set(at, lines.get(at).length() < 40 ? lines.get(at) + " " + word : "ILSE: No.");
        }
      }
    }
    editor.replace(String.join("\n", lines) + "\n");
  }

  private ElementPlaces places() {
    return new ElementPlaces(model.shown().orElseThrow().galley());
  }

  private StripItem any(Random random) {
    return any(places().all(), random);
  }

  private static <T> T any(List<T> all, Random random) {
    return all.get(random.nextInt(all.size()));
  }

  private Set<String> some(Random random) {
    return places().galley().balloons().stream()
        .map(PlacedBalloon::id)
        .filter(id -> random.nextInt(3) == 0)
        .collect(Collectors.toSet());
  }

  private void pull(Random random) {
    StripItem item = any(random);
    Grip grip =
        switch (random.nextInt(4)) {
          case 0 -> new Grip.Edge(item, random.nextInt(3) - 1, random.nextInt(3) - 1);
          case 1 -> new Grip.Gutter(1 + random.nextInt(3));
          default -> new Grip.Body(item);
        };
    Set<StripItem> chosen =
        some(random).stream()
            .map(id -> (StripItem) new StripItem.Balloon(id))
            .collect(Collectors.toSet());
    Gesture gesture = new Gesture(grip, chosen, places().galley(), new XY(0, 0));
    Optional<Layout> ground = work.editableLayout();
    for (int i = random.nextInt(3); i > 0; i--) {
      gesture
          .by(random.nextInt(400) - 200, random.nextInt(400) - 200)
          .ifPresent(edit -> work.preview(edit, ground.orElseThrow()));
    }
    Optional<StripEdit> last = gesture.by(random.nextInt(300) - 150, random.nextInt(300) - 150);
    if (last.isPresent() && random.nextInt(8) > 0) {
      work.edit("pulling", "", last.get(), ground.orElseThrow());
    } else {
      work.endPreview();
    }
  }

  private void look(Random random) {
    Set<String> ids = some(random);
    ShapeKind shape = any(List.of(ShapeKind.values()), random);
    switch (random.nextInt(4)) {
      case 0 -> work.edit("outline", "", new StripEdit.Shape(ids, Optional.of(shape)));
      case 1 -> work.edit("pin", "", new StripEdit.Pin(ids, random.nextBoolean()));
      case 2 ->
          work.edit(
              "align", "", layout -> any(List.of(Alignment.values()), random).of(layout, ids));
      default ->
          work.replace(
              "place",
              "",
              LayoutText.of(
                  proofer
                      .placeOnly(model.surroundings().orElseThrow().with(editor.text()), ids)
                      .layout()));
    }
  }

  private void mark(Random random) {
    double x = random.nextInt(1500);
    double y = 100 + random.nextInt(2000);
    switch (random.nextInt(3)) {
      case 0 ->
          work.edit(
              "area",
              "",
              new StripEdit.AddArea(new KeepClear(new Box(x, y, 90, 70), "", Extra.NONE)));
      case 1 -> work.edit("drop", "", new StripEdit.DropArea(random.nextInt(3)));
      default ->
          work.edit(
              "mouth",
              "",
              new StripEdit.PutMouth(
                  new StripItem.Mouth(1 + random.nextInt(2), "ILSE"), new XY(x, y)));
    }
  }
}
