package io.github.readfall.series;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.files.UnusablePath;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NewPartsTest {

  private final Path series;

  NewPartsTest(@TempDir Path series) {
    this.series = series;
  }

  private EpisodeFiles episode(String script) throws Exception {
    Path file = series.resolve(script);
    Files.createDirectories(file.getParent());
    return EpisodeFiles.at(Files.writeString(file, "PANEL\n")).get(0);
  }

  private List<String> names() throws IOException {
    try (var inside = Files.list(series)) {
      return inside.map(path -> String.valueOf(path.getFileName())).sorted().toList();
    }
  }

  private static List<String> letters(List<NewParts.Place> places) {
    return places.stream().map(NewParts.Place::letter).toList();
  }

  @Test
  void anEpisodeFolderHasItsPartsBesideIt() throws Exception {
    List<NewParts.Place> places = NewParts.places(episode("ep03/script.txt"), 2);
    NewParts.write(places, List.of("one", "two"));
    assertEquals(List.of("ep03", "ep03a", "ep03b"), names());
    assertEquals("two", Files.readString(series.resolve("ep03b/script.txt")));
  }

  @Test
  void aScriptBesideItsHouseStyleKeepsItsPartsThere() throws Exception {
    Files.writeString(series.resolve("series.toml"), "");
    List<NewParts.Place> places = NewParts.places(episode("script.txt"), 1);
    assertEquals(series.resolve("script-a.txt"), places.get(0).script());
  }

  @Test
  void lettersAreFreeAndInARow() throws Exception {
    EpisodeFiles episode = episode("ep03/script.txt");
    Files.createDirectory(series.resolve("ep03b"));
    assertEquals(List.of("a"), letters(NewParts.places(episode, 1)));
    assertEquals(List.of("c", "d"), letters(NewParts.places(episode, 2)));
    assertThrows(UnusablePath.class, () -> NewParts.places(episode, 25));
  }

  @Test
  void ofPartsThatCannotAllBeWrittenNoneIs() throws Exception {
    List<NewParts.Place> places = NewParts.places(episode("ep03/script.txt"), 2);
    Files.createDirectory(series.resolve("ep03b"));
    UnusablePath refusal =
        assertThrows(UnusablePath.class, () -> NewParts.write(places, List.of("one", "two")));
    assertTrue(refusal.getMessage().contains("ep03b"), refusal.getMessage());
    assertEquals(List.of("ep03", "ep03b"), names());
  }
}
