package io.github.readfall.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What place and check do to a strip and to the file that it lies in, from the command line. */
class StripCommandsTest {

  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final String SCRIPT =
      """
      Title: The Long Ebb
      Cast: Ilse, Wouter

      PANEL 1  long shot

      CAPTION: Nobody had turned the wheel since spring.

      ILSE: It is counting again.

      WOUTER: Then let it count, and come away from the edge.

      PANEL 2  medium shot

      ILSE (whisper): Hush.

      WOUTER: I only said that it is late.

      SFX: KRRANK
      """;

  private final Path folder;
  private final Path script;
  private final Path layout;

  StripCommandsTest(@TempDir Path folder) throws IOException {
    this.folder = folder;
    this.script = Files.writeString(folder.resolve("script.txt"), SCRIPT);
    this.layout = folder.resolve("layout.json");
  }

  private static JsonNode json(Object... args) {
    return JSON.readTree(Ran.of(args).out());
  }

  private JsonNode written() throws IOException {
    return JSON.readTree(Files.readString(layout));
  }

  /** Where each balloon's outline lies, by what it says. */
  private Map<String, String> boxesByText() throws IOException {
    Map<String, String> boxes = new TreeMap<>();
    for (JsonNode balloon : written().path("balloons")) {
      boxes.put(
          balloon.at("/cue/text").asString(), balloon.path("box") + " " + balloon.path("tailTo"));
    }
    return boxes;
  }

  private Set<String> files() throws IOException {
    try (Stream<Path> inside = Files.list(folder)) {
      return new HashSet<>(inside.map(file -> file.getFileName().toString()).toList());
    }
  }

  private static List<String> rules(JsonNode report) {
    return report.path("findings").valueStream().map(f -> f.path("rule").asString()).toList();
  }

  @Test
  void whatIsPlacedIsWrittenAndPassesTheCheck() throws IOException {
    Ran placed = Ran.of("place", folder);
    assertEquals(0, placed.status(), placed.out() + placed.err());
    assertTrue(placed.out().contains("wrote " + layout), placed.out());
    assertEquals(Set.of("script.txt", "layout.json"), files());
    assertEquals(6, written().path("balloons").size());
    Ran checked = Ran.of("check", folder, "--fail-on", "warning");
    assertEquals(0, checked.status(), checked.out());
    assertTrue(checked.out().contains("from layout.json"), checked.out());
  }

  @Test
  void placedTwiceIsTheSameAndTheFormerLayoutIsKept() throws IOException {
    Ran.of("place", folder);
    String first = Files.readString(layout);
    Ran.of("place", folder);
    assertEquals(first, Files.readString(layout));
    Files.writeString(script, SCRIPT.replace("late", "late, and dark, and that I am tired"));
    Ran.of("place", folder);
    assertFalse(first.equals(Files.readString(layout)), "the new words are not in the layout");
    assertEquals(first, Files.readString(folder.resolve("layout.previous.json")));
  }

  @Test
  void theLayoutOfABareScriptLiesBesideIt() throws IOException {
    Path bare = Files.writeString(folder.resolve("ebb.txt"), SCRIPT);
    JsonNode report = json("place", bare, "--json");
    Path file = Path.of(report.at("/files/0").asString());
    assertEquals(folder, file.getParent());
    assertTrue(Files.isRegularFile(file));
    assertTrue(Ran.of("check", bare).out().contains("from layout.json"));
  }

  @Test
  void aCheckWritesNothing() throws IOException {
    Ran.of("check", folder);
    assertEquals(Set.of("script.txt"), files());
    Ran.of("place", folder);
    String before = Files.readString(layout);
    Files.writeString(script, SCRIPT.replace("late", "late, and dark, and that I am tired"));
    Ran.of("check", folder);
    assertEquals(before, Files.readString(layout));
    assertEquals(Set.of("script.txt", "layout.json"), files());
  }

  @Test
  void lowPanelsAreOpenedByWhatIsNoted() throws IOException {
    Files.writeString(
        layout,
        """
        {"strip": {"widthPx": 1600, "heightPx": 1000},
         "panels": [{"panel": 1, "box": [100, 100, 1400, 350]},
                    {"panel": 2, "box": [100, 500, 1400, 350]}]}
        """);
    JsonNode tight = json("check", folder, "--json");
    assertTrue(rules(tight).contains("place/room"), rules(tight).toString());
    JsonNode opened = json("place", folder, "--open-gutters", "--json");
    assertFalse(rules(opened).contains("place/room"), rules(opened).toString());
    assertEquals(0, Ran.of("check", folder).status(), Ran.of("check", folder).out());
    double by = 0;
    for (JsonNode opening : written().path("openings")) {
      by += opening.path("byPx").asDouble();
    }
    assertTrue(by > 0, "no opening is noted");
    assertEquals(1000 + by, written().at("/strip/heightPx").asDouble(), 0.02);
  }

  @Test
  void whatCannotBePlacedWithoutRoomSaysSoEachTimeUntilThereIsRoom() throws IOException {
    Ran.of("place", folder);
    Files.writeString(
        script,
        SCRIPT.replace("ILSE: It is", "ILSE: Wait. What was it?\n\n".repeat(5) + "ILSE: It is"));
    JsonNode first = json("place", folder, "--json");
    assertTrue(rules(first).contains("place/room"), rules(first).toString());
    String tight = Files.readString(layout);
    assertEquals(rules(first), rules(json("place", folder, "--json")));
    assertEquals(tight, Files.readString(layout));
    JsonNode opened = json("place", folder, "--open-gutters", "--json");
    assertEquals(List.of(), placing(opened));
    assertEquals(0, Ran.of("check", folder).status());
    double byPx = written().at("/openings/0/byPx").asDouble();
    double wasPx = JSON.readTree(tight).at("/panels/1/box/1").asDouble();
    assertEquals(wasPx + byPx, written().at("/panels/1/box/1").asDouble(), 0.02);
  }

  private static List<String> placing(JsonNode report) {
    return rules(report).stream().filter(rule -> rule.matches("(place|flow|space)/.*")).toList();
  }

  @Test
  void aPanelThatHasBeenPutInIsNoLongerMissed() throws IOException {
    Ran.of("place", folder);
    Files.writeString(script, SCRIPT.replace("PANEL 2", "PANEL\n\nILSE: There.\n\nPANEL 2"));
    assertTrue(rules(json("place", folder, "--json")).contains("layout/panel-missing"));
    JsonNode opened = json("place", folder, "--open-gutters", "--json");
    assertEquals(List.of(), rules(opened).stream().toList());
    assertEquals(3, written().path("panels").size());
  }

  @Test
  void aScriptWithoutPanelsIsNotPlaced() throws IOException {
    Files.writeString(script, "Title: The Long Ebb\n");
    Ran ran = Ran.of("place", folder);
    assertTrue(ran.out().contains("script/no-panels"), ran.toString());
    assertFalse(ran.out().contains("wrote"), ran.out());
    assertEquals(Set.of("script.txt"), files());
  }

  @Test
  void aMouthOfNobodyIsNamedWithTheNameThatIsNear() throws IOException {
    Files.writeString(
        layout,
        """
        {"strip": {"widthPx": 1600, "heightPx": 5200},
         "panels": [{"panel": 1, "box": [0, 0, 1600, 2500]},
                    {"panel": 2, "box": [100, 2700, 1400, 2300]}],
         "speakers": [{"panel": 1, "speaker": "ISLE", "mouth": [800, 2000]},
                      {"panel": 1, "speaker": "wouter", "mouth": [300, 2000]}]}
        """);
    List<String> advice = new ArrayList<>();
    for (JsonNode finding : json("check", folder, "--json").path("findings")) {
      if (finding.path("rule").asString().equals("layout/speaker-unknown")) {
        advice.add(finding.path("advice").asString());
      }
    }
    assertEquals(List.of("Write Ilse if you meant that."), advice);
  }

  @Test
  void sixtyLinesInOnePanelLeaveEverySliceACut() throws IOException {
    StringBuilder talk = new StringBuilder("Cast: Ilse, Wouter\n\nPANEL 1\n");
    for (int i = 0; i < 60; i++) {
      talk.append(i % 2 == 0 ? "ILSE" : "WOUTER").append(": Do not touch it yet, please.\n");
    }
    Files.writeString(script, talk);
    JsonNode placed = json("place", folder, "--json");
    assertEquals(List.of(), placing(placed));
    double topPx = placed.at("/balloons/0/outline/box/1").asDouble();
    assertTrue(topPx < 600, "the first balloon lies " + topPx + " px down");
  }

  @ParameterizedTest
  @CsvSource({
    "'It is counting again.', 'It counts, and it counts again.'",
    "'\nILSE: It is counting again.\n', '\nILSE: It is counting again.\n\nILSE: All night.\n'",
    "'\nWOUTER: Then let it count, and come away from the edge.\n', ''",
    "'\nILSE (whisper): Hush.', '\nCAPTION: Later.\n\nILSE (whisper): Hush.'",
    "'only said that it is late.', 'said.'"
  })
  void aChangedCueMovesNoOther(String old, String changed) throws IOException {
    Ran.of("place", folder);
    Map<String, String> before = boxesByText();
    assertTrue(SCRIPT.contains(old), old);
    Files.writeString(script, SCRIPT.replace(old, changed));
    Ran.of("place", folder);
    Map<String, String> after = boxesByText();
    Map<String, String> same = new TreeMap<>(before);
    same.keySet().retainAll(after.keySet());
    assertTrue(same.size() >= 5, same.toString());
    same.forEach((text, box) -> assertEquals(box, after.get(text), text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "--afresh", "--open-gutters"})
  void aPinnedBalloonNeverMoves(String option) throws IOException {
    Files.writeString(
        layout,
        """
        {"strip": {"widthPx": 1600, "heightPx": 5200},
         "panels": [{"panel": 1, "box": [100, 100, 1400, 2400]},
                    {"panel": 2, "box": [100, 2700, 1400, 2300]}],
         "balloons": [{"id": "p1-3", "box": [900, 200, 560, 520], "pinned": true},
                      {"id": "p1-2", "box": [300, 1900, 600, 400]}]}
        """);
    Object[] args =
        option.isEmpty() ? new Object[] {"place", folder} : new Object[] {"place", folder, option};
    Ran.of(args);
    for (JsonNode balloon : written().path("balloons")) {
      if (balloon.path("id").asString().equals("p1-3")) {
        assertEquals("[900,200,560,520]", balloon.path("box").toString());
        assertTrue(balloon.path("pinned").asBoolean());
      } else if (balloon.path("id").asString().equals("p1-2")) {
        assertFalse(
            balloon.path("box").toString().equals("[300,1900,600,400]"),
            "it was met after the answer to it");
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "space/crowded, '[500, 600, 480, 380]', '[500, 1000, 620, 560]'",
    "flow/inverted, '[200, 1800, 480, 380]', '[800, 1000, 620, 560]'",
    "space/margin, '[20, 600, 480, 380]', '[800, 1400, 620, 560]'"
  })
  void aMendLeavesLessToFindAndSaysWhatItDid(String rule, String first, String second)
      throws IOException {
    Files.writeString(
        layout,
        """
        {"strip": {"widthPx": 1600, "heightPx": 5200},
         "panels": [{"panel": 1, "box": [0, 0, 1600, 2500]},
                    {"panel": 2, "box": [100, 2700, 1400, 2300]}],
         "balloons": [{"id": "p1-2", "box": %s}, {"id": "p1-3", "box": %s}]}
        """
            .replaceFirst("%s", first)
            .replaceFirst("%s", second));
    String before = Files.readString(layout);
    JsonNode found = json("check", folder, "--json");
    assertTrue(rules(found).contains(rule), rules(found).toString());
    String given = Files.readString(layout);
    JsonNode made = json("check", folder, "--fix", "--json").path("mended");
    assertTrue(made.size() > 0 && made.at("/0/balloon").isString(), made.toString());
    Files.writeString(layout, given);
    Ran fixed = Ran.of("check", folder, "--fix");
    assertTrue(fixed.out().contains("fixed: "), fixed.out());
    assertTrue(fixed.out().contains("wrote " + layout), fixed.out());
    assertFalse(before.equals(Files.readString(layout)), "the file was not written");
    assertEquals(before, Files.readString(folder.resolve("layout.previous.json")));
    JsonNode after = json("check", folder, "--json");
    assertFalse(rules(after).contains(rule), rules(after).toString());
    assertTrue(rules(after).size() < rules(found).size());
  }

  @Test
  void whereNothingCanBeMendedNothingIsWritten() throws IOException {
    Ran none = Ran.of("check", folder, "--fix");
    assertTrue(none.isRefusedInOneSentence(), none.toString());
    Ran.of("place", folder);
    String before = Files.readString(layout);
    Ran ran = Ran.of("check", folder, "--fix");
    assertFalse(ran.out().contains("wrote"), ran.out());
    assertEquals(before, Files.readString(layout));
    assertEquals(Set.of("script.txt", "layout.json"), files());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "{",
        "[]",
        "null",
        "\"layout\"",
        "{\"strip\": {\"widthPx\": 1600, \"heightPx\": 52",
        "{\"strip\": {\"widthPx\": NaN, \"heightPx\": 5000}, \"panels\": []}",
        "{\"strip\": {\"widthPx\": -5, \"heightPx\": 5000}, \"panels\": []}",
        "{\"strip\": {\"widthPx\": 1600}, \"panels\": []}",
        "{\"strip\": {\"widthPx\": 1600, \"heightPx\": 5000}, \"panels\": [{\"panel\": 1}]}",
        "{\"strip\": {\"widthPx\": 1600, \"heightPx\": 5000},"
            + " \"panels\": [{\"panel\": 1, \"box\": [0, 0, -9, 900]}]}",
        "{\"strip\": {\"widthPx\": 1600, \"heightPx\": 5000},"
            + " \"panels\": [{\"panel\": 1, \"box\": [0, 0, 1600, 1e999]}]}",
        "{\"strip\": {\"widthPx\": 1600, \"heightPx\": 5000},"
            + " \"panels\": [{\"panel\": 1, \"box\": [0, 0, 1600, 2400]}],"
            + " \"balloons\": [{\"id\": \"p1-1\", \"box\": [0, 0, 300, 200]},"
            + " {\"id\": \"p1-1\", \"box\": [0, 900, 300, 200]}]}"
      })
  void aLayoutThatCannotBeReadIsNamedAndNeverOverwritten(String text) throws IOException {
    Files.writeString(layout, text);
    for (String command : new String[] {"check", "place"}) {
      Ran ran = Ran.of(command, folder);
      assertTrue(
          ran.isRefusedInOneSentence() || (ran.status() == 1 && ran.out().contains("[layout/")),
          ran.toString());
      assertFalse(ran.err().contains("Exception"), ran.err());
      assertEquals(text, Files.readString(layout), command);
    }
    assertTrue(Ran.of("check", folder, "--fix").isRefusedInOneSentence());
    assertTrue(Ran.of("plan", folder).status() <= 2);
    assertEquals(text, Files.readString(layout));
    assertEquals(Set.of("script.txt", "layout.json"), files());
  }

  @Test
  void aFolderInPlaceOfTheLayoutIsRefused() throws IOException {
    Files.createDirectory(layout);
    for (String command : new String[] {"check", "place", "plan"}) {
      Ran ran = Ran.of(command, folder);
      assertTrue(ran.isRefusedInOneSentence() || ran.out().contains("[layout/"), ran.toString());
      assertFalse(ran.err().contains("Exception"), ran.err());
    }
    assertTrue(Files.isDirectory(layout));
    assertEquals(Set.of("script.txt", "layout.json"), files());
  }

  @Test
  void aNewerLayoutIsNamedAndItsKeysAreKept() throws IOException {
    Ran.of("place", folder);
    String old = Files.readString(layout);
    Files.writeString(
        layout,
        old.replaceFirst("\"readfall-layout\": 1", "\"readfall-layout\": 9, \"moon\": \"full\""));
    JsonNode report = json("place", folder, "--json");
    assertTrue(rules(report).contains("layout/newer-version"), rules(report).toString());
    assertTrue(rules(report).contains("layout/unknown-key"), rules(report).toString());
    assertEquals(9, written().path("readfall-layout").asInt());
    assertEquals("full", written().path("moon").asString());
  }

  @Test
  void whatIsGoneFromTheScriptIsParkedAndComesBack() throws IOException {
    Ran.of("place", folder);
    Map<String, String> before = boxesByText();
    String line = "WOUTER: I only said that it is late.\n";
    Files.writeString(script, SCRIPT.replace(line, ""));
    JsonNode report = json("place", folder, "--json");
    assertTrue(rules(report).contains("layout/cue-gone"), rules(report).toString());
    assertEquals(1, written().at("/parked/balloons").size());
    Files.writeString(script, SCRIPT);
    Ran.of("place", folder);
    assertEquals(before, boxesByText());
    assertTrue(written().path("parked").isMissingNode());
  }

  @ParameterizedTest
  @ValueSource(strings = {"ep01", "ep02"})
  void theSamplesArePlacedWithoutAFaultAndStayPut(String name) throws IOException {
    Path sample = Path.of("sample-scripts/overdue-tide", name, "script.txt");
    Files.copy(sample, script, StandardCopyOption.REPLACE_EXISTING);
    assertEquals(0, Ran.of("place", folder).status());
    String first = Files.readString(layout);
    assertEquals(0, Ran.of("check", folder).status());
    Ran.of("place", folder);
    assertEquals(first, Files.readString(layout));
  }

  @Test
  void anIgnoredFindingIsShownAndFailsNothing() throws IOException {
    Ran placed = Ran.of("place", folder);
    assertEquals(0, placed.status(), placed.err());
    Files.writeString(
        layout,
        Files.readString(layout).replaceFirst("\"tailTo\": \\[[^]]*]", "\"tailTo\": [1590, 5]"));
    JsonNode found = json("check", folder, "--json").path("findings").get(0);
    assertEquals(1, Ran.of("check", folder, "--fail-on", "warning").status());
    String said = lines().get(found.path("scriptLine").asInt() - 1);
    Files.writeString(
        folder.resolve("ignored.toml"),
        "[[finding]]\nrule = %s\npanel = %s\ncues = ['%s']\nreason = 'Meant.'\n"
            .formatted(found.path("rule"), found.path("panel"), said));

    Ran table = Ran.of("check", folder, "--fail-on", "warning");

    assertEquals(0, table.status(), table.out());
    assertTrue(table.out().contains("    ignored: Meant.\n"), table.out());
    assertTrue(table.out().contains("0 notes, 1 ignored"), table.out());
    JsonNode after = json("check", folder, "--json").path("findings").get(0);
    assertEquals("Meant.", after.path("setAside").asString());
    assertEquals(found.path("message"), after.path("message"));
  }

  private List<String> lines() throws IOException {
    return Files.readAllLines(script);
  }
}
