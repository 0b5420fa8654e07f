package io.github.readfall.series.autosave;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class WindowStateTest {

  private static final ScriptViewState VIEW =
      new ScriptViewState(
          12, 3, 8400.5, "half", "Small phone", Set.of("path"), Set.of("error"), "tails");

  private final Path folder;
  private final WindowStateFile file;

  WindowStateTest(@TempDir Path folder) {
    this.folder = folder;
    this.file = WindowStateFile.in(folder.resolve("state"));
  }

  private Path script(int number) {
    return folder.resolve("ep" + number).resolve("script.txt");
  }

  private WindowState read(String json) throws Exception {
    Files.createDirectories(folder.resolve("state"));
    Files.writeString(file.path(), json);
    WindowStateFile.Read read = file.read();
    assertEquals(Optional.empty(), read.trouble());
    return read.remembered();
  }

  @Test
  void everythingComesBackAsItWasLeft() throws Exception {
    WindowState left =
        WindowState.FIRST
            .opened(script(1))
            .opened(script(2))
            .placed(new WindowBox(-1500, 40, 1200, 800), true)
            .split("strip", 0.4)
            .split("findings", 0.75)
            .themed(ThemeChoice.DARK)
            .textSized(15)
            .viewed(script(1), ScriptViewState.FIRST)
            .viewed(script(2), VIEW)
            .measured("1920x1080+0+0@1.0", 3.78)
            .measured("1280x800-1280+0@2.0", 4.5)
            .measured("1920x1080+0+0@1.0", 3.8);
    file.write(left);
    WindowState again = file.read().remembered();
    assertEquals(Optional.of(new WindowBox(-1500, 40, 1200, 800)), again.window());
    assertTrue(again.maximised());
    assertEquals(Map.of("strip", 0.4, "findings", 0.75), again.splits());
    assertEquals(ThemeChoice.DARK, again.theme());
    assertEquals(15, again.textSizePt());
    assertEquals(Optional.of(script(2)), again.last());
    assertEquals(List.of(script(2), script(1)), again.recent());
    assertEquals(VIEW, again.view(script(2)));
    assertEquals(ScriptViewState.FIRST, again.view(script(3)));
    assertEquals(Map.of("1920x1080+0+0@1.0", 3.8, "1280x800-1280+0@2.0", 4.5), again.screens());
    assertEquals(List.copyOf(left.views().keySet()), List.copyOf(again.views().keySet()));
  }

  @Test
  void aFirstRunHasNothingToReadAndSaysNothing() {
    assertEquals(new WindowStateFile.Read(WindowState.FIRST, Optional.empty()), file.read());
  }

  @Test
  void recentPathsAreTheNewestTwelveEachOnce() {
    WindowState some = WindowState.FIRST;
    for (int number = 1; number <= 15; number++) {
      some = some.opened(script(number));
    }
    some = some.opened(folder.resolve("x").resolve("..").resolve("ep9").resolve("script.txt"));
    assertEquals(12, some.recent().size());
    assertEquals(List.of(script(9), script(15), script(14)), some.recent().subList(0, 3));
    assertEquals(1, some.recent().stream().filter(script(9)::equals).count());
  }

  @Test
  void ofScreensThatWereMeasuredTheNewestTwentyAreKept() {
    WindowState some = WindowState.FIRST;
    for (int x = 1; x <= 25; x++) {
      some = some.measured(new ScreenName(new WindowBox(x, -1, 800, 600), 1.5).word(), x);
    }
    assertEquals(20, some.screens().size());
    assertEquals("800x600+25-1@1.5", some.screens().keySet().iterator().next());
    assertEquals(25, some.screens().get("800x600+25-1@1.5"));
  }

  @Test
  void keysOfANewerProgramStayWhereTheyAre() throws Exception {
    String newer =
        """
        {"wheel": [1, {"turns": true}], "window": {"x": 1, "y": 2, "width": 300, "height": 200,
         "screen": "left"}, "scripts": [{"path": "%s", "zoom": "double", "notes": "blue"}]}
        """
            .formatted(script(1).toString().replace("\\", "\\\\"));
    file.write(read(newer).themed(ThemeChoice.LIGHT).viewed(script(1), VIEW));
    JsonNode json = JsonMapper.builder().build().readTree(Files.readString(file.path()));
    assertEquals("[1,{\"turns\":true}]", json.path("wheel").toString());
    assertEquals("left", json.path("window").path("screen").stringValue());
    assertEquals(300, json.path("window").path("width").intValue());
    assertEquals("light", json.path("theme").stringValue());
    assertEquals("blue", json.path("scripts").path(0).path("notes").stringValue());
    assertEquals("half", json.path("scripts").path(0).path("zoom").stringValue());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "{", "[]", "null", "7", "{\"theme\": \"dark\"", "\u0000\u0000"})
  void aBrokenFileIsKeptBesideAndTheWindowStartsAfresh(String broken) throws Exception {
    Files.createDirectories(folder.resolve("state"));
    Files.writeString(file.path(), broken);
    WindowStateFile.Read read = file.read();
    assertEquals(WindowState.FIRST, read.remembered());
    Path kept = folder.resolve("state").resolve("window.broken.json");
    assertTrue(read.trouble().orElse("").contains(kept.toString()), () -> read.toString());
    assertEquals(broken, Files.readString(kept));
    file.write(WindowState.FIRST);
    assertEquals(Optional.empty(), file.read().trouble());
  }

  @Test
  void whatMakesNoSenseIsAsAtTheFirstRun() throws Exception {
    WindowState odd =
        read(
            """
            {"window": {"x": 1, "y": 1e99, "width": -5, "height": "wide", "maximised": "perhaps"},
             "splits": {"strip": 7, "findings": 0.5, "other": null}, "theme": 4,
             "textSizePt": 4000, "last": ["x"], "recent": "none", "scripts": {"path": 1},
             "screens": {"a": 0, "b": "wide", "c": -3, "d": 1e999, "e": 4}}
            """);
    assertEquals(Optional.empty(), odd.window());
    assertEquals(Map.of("findings", 0.5), odd.splits());
    assertEquals(ThemeChoice.AS_SYSTEM, odd.theme());
    assertEquals(0, odd.textSizePt());
    assertEquals(Optional.empty(), odd.last());
    assertEquals(List.of(), odd.recent());
    assertEquals(Map.of(), odd.views());
    assertEquals(Map.of("e", 4.0), odd.screens());
    file.write(odd);
  }

  @Test
  void aViewIsBroughtBackToWhatCanBeShown() {
    ScriptViewState odd =
        new ScriptViewState(
            -4,
            0,
            Double.NaN,
            "",
            "",
            ScriptViewState.FIRST.layers(),
            ScriptViewState.FIRST.severities(),
            "");
    assertEquals(ScriptViewState.FIRST, odd);
  }

  @Test
  void viewsOfTheScriptsSeenLastAreKept() {
    WindowState many = WindowState.FIRST;
    for (int number = 1; number <= 130; number++) {
      many = many.viewed(script(number), VIEW);
    }
    assertEquals(100, many.views().size());
    assertEquals(VIEW, many.view(script(130)));
    assertEquals(ScriptViewState.FIRST, many.view(script(30)));
  }
}
