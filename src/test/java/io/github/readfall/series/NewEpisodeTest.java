package io.github.readfall.series;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.read.ReadScript;
import io.github.readfall.script.read.ScriptReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NewEpisodeTest {

  private final Path series;

  NewEpisodeTest(@TempDir Path folder) throws Exception {
    series = folder.resolve("series");
    List<Path> unused = NewSeries.in(series);
  }

  private void episode(String name, String text) throws IOException {
    Files.createDirectories(series.resolve(name));
    Files.writeString(series.resolve(name).resolve("script.txt"), text);
  }

  @Test
  void theNextEpisodeHasTheCastAndLanguageOfTheLast() throws Exception {
    episode("ep02", "Title: Two\nLanguage: de\nCast: Ilse,\n  Old Wouter (elder)\n\nPANEL 1\n");
    Path script = NewEpisode.in(series);
    assertEquals(series.resolve("ep03").resolve("script.txt"), script);
    assertEquals(
        "Title: \nEpisode: 3\nLanguage: de\nCast: Ilse, Old Wouter (elder)\n\nPANEL 1\n\n",
        Files.readString(script));
  }

  @Test
  void whatAnEpisodeStartsWithIsFreeOfErrors() throws Exception {
    ReadScript read =
        new ScriptReader().read(Files.readString(NewEpisode.in(series)), Keywords.ENGLISH);
    assertEquals(List.of(), read.findings());
    assertEquals(1, read.script().panels().size());
  }

  @ParameterizedTest
  @CsvSource({
    "ep07, ep08",
    "ep009, ep010",
    "ep99, ep100",
    "EP12, EP13",
    "ep07b, ep08",
    "ep, ep02",
    "epilogue, ep02",
  })
  void itsNumberIsTheNext(String there, String next) throws Exception {
    Files.createDirectories(series.resolve(there));
    assertEquals(series.resolve(next).resolve("script.txt"), NewEpisode.in(series));
  }

  @Test
  void nothingIsWrittenOver() throws Exception {
    Path second = NewEpisode.in(series);
    Files.writeString(second, "mine");
    Path third = NewEpisode.in(series);
    assertEquals("mine", Files.readString(second));
    assertEquals(series.resolve("ep03"), third.getParent());
  }

  @Test
  void thePanelIsCalledAsTheSeriesCallsIt() throws Exception {
    Files.writeString(series.resolve("series.toml"), "[keywords]\npanel = \"TAFEL\"\n");
    assertTrue(Files.readString(NewEpisode.in(series)).contains("\nTAFEL 1\n"));
  }

  @Test
  void aFolderThatIsNoSeriesIsRefused(@TempDir Path other) {
    UnusablePath refusal = assertThrows(UnusablePath.class, () -> NewEpisode.in(other));
    assertTrue(refusal.getMessage().contains("series.toml"), refusal.getMessage());
  }
}
