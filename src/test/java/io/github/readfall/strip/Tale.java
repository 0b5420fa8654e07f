package io.github.readfall.strip;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.script.Cue;
import io.github.readfall.script.Script;
import io.github.readfall.script.read.ScriptReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/** A script made by chance that remembers which line is which while it is edited. */
public final class Tale {

  /** A line that is said; its tag is the left edge of its balloon. */
  public record Line(int tag, String speaker, String text) {}

  /** A panel; its tag is the top edge of its box. */
  public record Scene(int tag, String heading, List<Line> lines) {}

  private static final List<String> SPEAKERS = List.of("ILSE", "OLD WOUTER", "MIEKE", "CAPTION");
  private static final List<String> HEADINGS =
      List.of("", "", "", "long shot", "close-up", "medium, tall", "close-up of the wheel", "rain");
  private static final List<String> SHORT = List.of("No.", "What?!", "…", "Yes.");
  private static final List<String> WORDS =
      List.of(
          "the", "mill", "wheel", "turns", "again", "tide", "nobody", "counts", "water", "before",
          "dawn", "rope", "slack", "listen", "it", "was", "spring", "when", "you", "left", "me",
          "stones", "under", "boat", "lantern", "never", "came", "back", "still", "hungry");

  public final List<Scene> scenes = new ArrayList<>();
  private final SplittableRandom random;
  private final List<Integer> tags = new ArrayList<>(List.of(0));

  public Tale(long seed, int panels) {
    this.random = new SplittableRandom(seed);
    for (int i = 0; i < panels; i++) {
      scenes.add(newScene(random.nextInt(6)));
    }
  }

  public Scene newScene(int lines) {
    Scene scene = new Scene(tag(), any(HEADINGS), new ArrayList<>());
    for (int i = 0; i < lines; i++) {
      boolean brief = random.nextInt(6) == 0;
      scene.lines().add(new Line(tag(), any(SPEAKERS), brief ? any(SHORT) : sentence()));
    }
    return scene;
  }

  public Line newLine() {
    return new Line(tag(), any(SPEAKERS), sentence());
  }

  private int tag() {
    tags.add(tags.size());
    return tags.size();
  }

  public String sentence() {
    List<String> words = new ArrayList<>();
    int count = 5 + random.nextInt(9);
    for (int i = 0; i < count; i++) {
      words.add(any(WORDS));
    }
    return String.join(" ", words) + ".";
  }

  public <T> T any(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }

  /** A panel with at least so many lines of more than one word, none of them said twice. */
  public Scene anyScene(int leastLines) {
    return any(scenes.stream().filter(scene -> longLines(scene).size() >= leastLines).toList());
  }

  public static List<Line> longLines(Scene scene) {
    return scene.lines().stream().filter(line -> line.text().length() > 10).toList();
  }

  public List<Line> lines() {
    return scenes.stream().flatMap(scene -> scene.lines().stream()).toList();
  }

  public Script script() {
    StringBuilder text = new StringBuilder();
    for (Scene scene : scenes) {
      text.append("PANEL ").append(scene.heading()).append("\n\n");
      scene.lines().forEach(l -> text.append(l.speaker() + ": " + l.text() + "\n\n"));
    }
    return new ScriptReader().read(text.toString(), HouseStyle.DEFAULT.keywords()).script();
  }

  /** A layout in which every panel and every balloon has a box that shows its tag. */
  public Layout layout() {
    Script script = script();
    List<Line> lines = lines();
    List<Cue> cues = script.cues();
    if (cues.size() != lines.size()) {
      throw new AssertionError("the script has other cues than the tale");
    }
    List<PanelBox> panels =
        IntStream.range(0, scenes.size())
            .mapToObj(i -> new PanelBox(i + 1, panelBox(scenes.get(i).tag())))
            .toList();
    List<LaidBalloon> balloons =
        IntStream.range(0, lines.size())
            .mapToObj(i -> balloon(cues.get(i), lines.get(i).tag(), panels))
            .toList();
    List<Mouth> mouths =
        panels.stream()
            .map(p -> new Mouth(p.panel(), "ILSE", new XY(5, p.box().y() + 5), Extra.NONE))
            .toList();
    return new Layout(
            9000, 900_000, panels, List.of(), mouths, balloons, Optional.empty(), Extra.NONE)
        .withHeadings(script);
  }

  public static Box panelBox(int tag) {
    return new Box(0, tag * 100, 9000, 90);
  }

  private static LaidBalloon balloon(Cue cue, int tag, List<PanelBox> panels) {
    double top = panels.get(cue.panel() - 1).box().y() + 10;
    return new LaidBalloon(
        cue.id(),
        Optional.of(CueMark.of(cue)),
        Optional.empty(),
        Optional.of(new Box(tag, top, 4, 4)),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        List.of(),
        false,
        false,
        Extra.NONE);
  }
}
