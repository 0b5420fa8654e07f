package io.github.readfall.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.Endurance;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.style.StyleReader;
import io.github.readfall.lettering.typeset.Sample;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.plan.PanelPlanner;
import io.github.readfall.rules.RuleBook;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Script;
import io.github.readfall.script.read.ScriptReader;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.galley.Compositor;
import io.github.readfall.strip.json.LayoutReader;
import io.github.readfall.strip.json.LayoutWriter;
import io.github.readfall.type.font.FontShelf;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is placed on a strip that leaves room is right by every rule, whatever the script. */
class PlacedStripsTest {

  private static final FontShelf SHELF = Sample.shelf();
  private static final List<String> SAID =
      List.of(
          "Hm.",
          "No!",
          "It is late.",
          "Nobody had turned the wheel since spring.",
          "Do not touch it / yet.",
          "*Who* took my ladder, and who gave it to the moon?",
          "I counted the steps twice, and both times there was one more than there should be.");

  private static final List<String> HOW =
      List.of(
          "ILSE",
          "ILSE",
          "ILSE",
          "WOUTER",
          "WOUTER",
          "WOUTER (thought)",
          "ILSE (shout)",
          "MILA",
          "MILA (whisper)",
          "ILSE (off)",
          "WOUTER (electronic)",
          "CAPTION",
          "CAPTION",
          "SFX",
          "ILSE (joined)");

  private static final List<String> SHOTS =
      List.of(
          "",
          "",
          "close-up",
          "long shot, wide",
          "extreme long shot, tall",
          "medium shot",
          "inset",
          "close-up, beside previous",
          "full shot, height 900",
          "extreme close-up");

  static Stream<Integer> seeds() {
    return IntStream.range(0, Endurance.rounds(20, 80)).boxed();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void nothingIsFoundOnIt(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    HouseStyle style = style(seed);
    Script script = new ScriptReader().read(script(random), Keywords.ENGLISH).script();
    Typesetter typesetter = new Typesetter(SHELF, style);
    SetEpisode set = typesetter.set(script);
    ComposedStrip placed = StripMaker.asLaid(set, PanelPlanner.plan(set));
    assertEquals(set.balloons().size(), placed.galley().balloons().size(), "placed");
    assertEquals(List.of(), placed.shortfalls());
    assertEquals(List.of(), grave(placed), script.text());

    Layout read =
        new LayoutReader().read(LayoutWriter.write(placed.layout())).layout().orElseThrow();
    SetEpisode again = typesetter.set(script, Compositor.wanted(read));
    ComposedStrip reread = StripMaker.asLaid(again, read);
    assertEquals(List.of(), reread.shortfalls());
    assertEquals(List.of(), grave(reread), "written and read");
    assertEquals(LayoutWriter.write(read), LayoutWriter.write(reread.layout()), "nothing moves");
  }

  /** Errors, and all findings about the order and the room; how much is said is not placing. */
  private static List<String> grave(ComposedStrip placed) {
    return RuleBook.check(placed.galley()).stream()
        .filter(f -> f.severity() == Severity.ERROR || f.rule().matches("(flow|space)/.*"))
        .filter(f -> !f.rule().equals("space/cut") || f.severity() == Severity.ERROR)
        .map(PlacedStripsTest::print)
        .toList();
  }

  private static String print(Finding finding) {
    return finding.rule() + " " + finding.where().balloons() + " " + finding.message();
  }

  private static HouseStyle style(int seed) {
    String reads = seed % 3 == 0 ? "rtl" : "ltr";
    return new StyleReader().read("[strip]\nreads = \"" + reads + "\"\n", "series.toml").style();
  }

  private static String script(SplittableRandom random) {
    StringBuilder script = new StringBuilder("Title: Nine Doors\n\n");
    int panels = 2 + random.nextInt(9);
    for (int p = 0; p < panels; p++) {
      if (random.nextInt(5) == 0) {
        script.append("SCENE Stairs\n\n");
      }
      script.append("PANEL  ").append(one(SHOTS, random)).append("\nA door.\n\n");
      int cues = random.nextInt(9);
      for (int c = 0; c < cues; c++) {
        script.append(one(HOW, random)).append(": ").append(one(SAID, random)).append("\n\n");
      }
    }
    assertTrue(script.length() > 0);
    return script.toString();
  }

  private static String one(List<String> of, SplittableRandom random) {
    return of.get(random.nextInt(of.size()));
  }
}
