package io.github.readfall.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.script.read.ScriptReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ScriptPartsTest {

  private static Script read(String text) {
    return new ScriptReader().read(text, Keywords.ENGLISH).script();
  }

  private static List<String> parts(String text, Integer... firstPanels) {
    List<String> letters = List.of("a", "b", "c").subList(0, firstPanels.length);
    return ScriptParts.of(read(text), Arrays.asList(firstPanels), letters);
  }

  @Test
  void everyPartHasTheHeadersAndTheSceneThatGoesOn() {
    List<String> parts =
        parts(
            """
            Title: The Long Ebb
            // mine
            Episode: 3
            Cast: Ilse,
              Otto

            SCENE Mill

            PANEL 1
            // an aside

            ILSE: Now.
            // said twice

            // leave a long gutter

            PANEL 2

            SCENE Harbour
            It rains.

            PANEL 3
            """,
            1,
            2,
            3);
    assertEquals(
        """
        Title: The Long Ebb
        // mine
        Episode: 3a
        Cast: Ilse,
          Otto

        SCENE Mill

        PANEL 1
        // an aside

        ILSE: Now.
        // said twice

        """,
        parts.get(0));
    assertEquals(
        """
        Title: The Long Ebb
        Episode: 3b
        Cast: Ilse,
          Otto

        SCENE Mill

        // leave a long gutter

        PANEL 2

        """,
        parts.get(1));
    assertEquals(
        """
        Title: The Long Ebb
        Episode: 3c
        Cast: Ilse,
          Otto

        SCENE Harbour
        It rains.

        PANEL 3
        """,
        parts.get(2));
  }

  @Test
  void lineEndsAndTheByteOrderMarkAreKept() {
    List<String> parts = parts("\uFEFFEpisode: Pilot\r\n\r\nPANEL\r\n\r\nPANEL", 1, 2);
    assertEquals("\uFEFFEpisode: Pilot a\r\n\r\nPANEL\r\n\r\n", parts.get(0));
    assertEquals("\uFEFFEpisode: Pilot b\r\n\r\nPANEL", parts.get(1));
  }

  @ParameterizedTest
  @ValueSource(strings = {"ep01", "ep02"})
  void theSamplesComeBackWhole(String episode) throws Exception {
    String text = Files.readString(Path.of("sample-scripts/overdue-tide", episode, "script.txt"));
    for (int panel = 2; panel <= read(text).panels().size(); panel++) {
      checkWhole(text, parts(text, 1, panel));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
  void anyScriptComesBackWhole(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<String> lines =
        List.of(
            "PANEL",
            "PANEL 3  inset",
            "SCENE Mill",
            "SCENE",
            "",
            "",
            "// note",
            "Rain.",
            "ILSE: Now.",
            "ILSE (joined): Then.",
            "goes on",
            "OTTO",
            "SFX: KRRANK");
    StringBuilder text = new StringBuilder("Episode: 4\nCast: Ilse, Otto\n\nPANEL\n\nPANEL\n");
    for (int i = 0; i < 60; i++) {
      text.append(lines.get(random.nextInt(lines.size()))).append('\n');
    }
    int panels = read(text.toString()).panels().size();
    int second = random.nextInt(2, panels + 1);
    checkWhole(text.toString(), parts(text.toString(), 1, second));
  }

  /** The parts in order say what the whole says, and no line of it is missing. */
  private static void checkWhole(String text, List<String> parts) {
    List<String> said = new ArrayList<>();
    List<String> seen = new ArrayList<>();
    List<String> lines = new ArrayList<>();
    for (String part : parts) {
      Script script = read(part);
      script.cues().forEach(cue -> said.add(cue.speaker() + cue.manners() + cue.text().raw()));
      script.panels().forEach(panel -> seen.add(panel.heading() + panel.description()));
      part.lines().forEach(lines::add);
    }
    Script whole = read(text);
    assertEquals(
        whole.cues().stream().map(c -> c.speaker() + c.manners() + c.text().raw()).toList(), said);
    assertEquals(whole.panels().stream().map(p -> p.heading() + p.description()).toList(), seen);
    List<String> missing = new ArrayList<>(text.lines().toList());
    lines.forEach(missing::remove);
    assertTrue(missing.stream().allMatch(line -> line.startsWith("Episode:")), missing.toString());
    assertEquals(1, missing.size());
  }
}
