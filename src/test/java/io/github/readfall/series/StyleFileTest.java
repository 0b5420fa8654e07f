package io.github.readfall.series;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StyleFileTest {

  private final Path folder;
  private final Path toml;
  private final StyleFile file;

  StyleFileTest(@TempDir Path folder) throws IOException {
    this.folder = folder;
    toml = folder.resolve("series.toml");
    Files.writeString(toml, "\uFEFF[limits]\r\n# é\r\n");
    file = new StyleFile(toml);
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(path -> String.valueOf(path.getFileName())).sorted().toList();
    }
  }

  @Test
  void whatWasReadIsReplacedAndComesBackToTheByte() throws Exception {
    byte[] before = Files.readAllBytes(toml);
    String text = file.text();
    assertTrue(file.replace(text, "[limits]\n"));
    assertEquals("[limits]\n", Files.readString(toml));
    assertTrue(file.replace("[limits]\n", text));
    assertEquals(List.of(before.length), List.of(Files.readAllBytes(toml).length));
    assertEquals(text, file.text());
    assertEquals(List.of("series.toml"), names());
  }

  @Test
  void whatOthersHaveWrittenSinceIsLeftAlone() throws Exception {
    String text = file.text();
    Files.writeString(toml, "theirs");
    assertFalse(file.replace(text, "ours"));
    assertEquals("theirs", Files.readString(toml));
    Files.delete(toml);
    assertFalse(file.replace(text, "ours"));
    assertEquals(List.of(), names());
  }

  @Test
  void aScriptThatLiesAloneHasNone() {
    assertEquals(
        Optional.empty(),
        StyleFile.of(new EpisodeFiles(folder.resolve("script.txt"), Optional.empty())));
    assertEquals(
        Optional.of(file),
        StyleFile.of(new EpisodeFiles(folder.resolve("script.txt"), Optional.of(folder))));
  }
}
