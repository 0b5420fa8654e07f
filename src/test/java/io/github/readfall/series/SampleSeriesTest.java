package io.github.readfall.series;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.readfall.base.files.UnusablePath;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SampleSeriesTest {

  private final Path copy;

  SampleSeriesTest(@TempDir Path folder) {
    copy = folder.resolve("sample").resolve("overdue-tide");
  }

  @Test
  void theCopySaysWhatTheSampleSays() throws Exception {
    assertEquals(copy, SampleSeries.copied(Installation.sample(), copy));
    assertEquals(texts(Path.of("sample-scripts", "overdue-tide")), texts(copy));
    assertEquals(2, EpisodeFiles.at(copy).size());
  }

  @Test
  void whatThePersonEditedStays() throws Exception {
    Path script = SampleSeries.copied(Installation.sample(), copy).resolve("ep01/script.txt");
    Files.writeString(script, "mine");
    Files.delete(copy.resolve("ep02/script.txt"));
    Path unused = SampleSeries.copied(Installation.sample(), copy);
    assertEquals("mine", Files.readString(script));
    assertFalse(Files.exists(copy.resolve("ep02/script.txt")));
  }

  @Test
  void aCopyThatWasBrokenOffIsMadeAnew() throws Exception {
    Path part = Files.createDirectories(copy.resolveSibling(".overdue-tide.part/ep01"));
    Files.writeString(part.resolve("script.txt"), "half");
    Path unused = SampleSeries.copied(Installation.sample(), copy);
    assertEquals(texts(Path.of("sample-scripts", "overdue-tide")), texts(copy));
    assertFalse(Files.exists(part));
  }

  @Test
  void aPlaceThatCannotBeMadeIsRefused() throws IOException {
    Files.writeString(copy.getParent(), "a file is in the way");
    assertThrows(UnusablePath.class, () -> SampleSeries.copied(Installation.sample(), copy));
  }

  private static Map<String, String> texts(Path top) throws IOException {
    Map<String, String> texts = new TreeMap<>();
    try (Stream<Path> files = Files.walk(top)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        texts.put(top.relativize(file).toString(), Files.readString(file));
      }
    }
    return texts;
  }
}
