package io.github.readfall.series;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.geom.Box;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.json.LayoutWriter;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.font.OpenFaces;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LayoutFileTest {

  private static final Layout FIRST = layout(100);
  private static final Layout SECOND = layout(200);

  private final Path folder;
  private final LayoutFile file;

  LayoutFileTest(@TempDir Path folder) throws Exception {
    this.folder = folder;
    Path script =
        Files.writeString(folder.resolve("tide.txt"), "PANEL\nILSE: No.\n\nPANEL\nILSE: Yes.\n");
    this.file = LayoutFile.of(EpisodeFiles.at(script).get(0));
  }

  private static Layout layout(double topPx) {
    return Layout.of(1600, 9000, List.of(new PanelBox(1, new Box(0, topPx, 1600, 900))));
  }

  @Test
  void whereThereIsNoneNothingIsRead() throws Exception {
    assertEquals(Optional.empty(), file.read());
  }

  @Test
  void whatIsSavedIsReadAgainBesideTheScript() throws Exception {
    file.save(FIRST);
    assertEquals(folder.resolve("layout.json"), file.path());
    assertEquals(Optional.of(FIRST), file.read().orElseThrow().layout());
    assertEquals(List.of("layout.json", "tide.txt"), names());
  }

  @Test
  void theOneBeforeIsKept() throws Exception {
    file.save(FIRST);
    file.save(SECOND);
    assertEquals(LayoutWriter.write(SECOND), Files.readString(file.path()));
    assertEquals(LayoutWriter.write(FIRST), Files.readString(file.previous()));
    assertEquals(List.of("layout.json", "layout.previous.json", "tide.txt"), names());
  }

  @Test
  void savingTheSameTwiceDoesNotLoseTheOneBefore() throws Exception {
    file.save(FIRST);
    file.save(SECOND);
    file.save(SECOND);
    assertEquals(LayoutWriter.write(FIRST), Files.readString(file.previous()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "{", "[]", "{\"strip\": 1}", "{\"panels\": []} {}"})
  void whatCannotBeUnderstoodIsNotOverwritten(String text) throws Exception {
    Files.writeString(file.path(), text);
    UnusablePath refusal = assertThrows(UnusablePath.class, () -> file.save(FIRST));
    assertTrue(refusal.getMessage().contains("not overwritten: fix it"), refusal.getMessage());
    assertEquals(text, Files.readString(file.path()));
    assertFalse(Files.exists(file.previous()));
  }

  @Test
  void whatIsNoTextIsRefusedAndStays() throws Exception {
    byte[] bytes = {(byte) 0xC3, 0x28, 0x41};
    Files.write(file.path(), bytes);
    assertTrue(assertThrows(UnusablePath.class, file::read).getMessage().contains("not UTF-8"));
    assertThrows(UnusablePath.class, () -> file.save(FIRST));
    assertEquals(3, Files.size(file.path()));
  }

  @Test
  void aFolderOfThatNameIsRefused() throws Exception {
    Files.createDirectory(file.path());
    UnusablePath refusal = assertThrows(UnusablePath.class, file::read);
    assertEquals(
        file.path() + " is a folder: it should be the file with the layout.", refusal.getMessage());
    assertThrows(UnusablePath.class, () -> file.save(FIRST));
  }

  @Test
  void wherePreviousCannotBeKeptNothingIsWritten() throws Exception {
    file.save(FIRST);
    Files.createDirectory(file.previous());
    assertThrows(UnusablePath.class, () -> file.save(SECOND));
    assertEquals(LayoutWriter.write(FIRST), Files.readString(file.path()));
  }

  @Test
  void anEpisodeHasItsLayoutPutOntoItsScript() throws Exception {
    file.save(FIRST);
    Episode episode = episode();
    assertEquals("", episode.layout().orElseThrow().panels().get(0).heading());
    assertEquals(List.of("layout/panel-missing"), rules(episode));
    assertEquals(4, episode.findings().get(0).where().line().orElseThrow());
  }

  @Test
  void anEpisodeWithABrokenLayoutIsReadWithoutIt() throws Exception {
    Files.writeString(file.path(), "{\"strip\": ");
    Episode episode = episode();
    assertEquals(Optional.empty(), episode.layout());
    assertEquals(List.of("layout/syntax"), rules(episode));
    Finding finding = episode.findings().get(0);
    assertEquals("layout.json", finding.where().file());
  }

  private Episode episode() throws Exception {
    FontShelf bundled = OpenFaces.shelf();
    return Episode.read(EpisodeFiles.at(folder.resolve("tide.txt")).get(0), bundled);
  }

  private static List<String> rules(Episode episode) {
    return episode.findings().stream().map(Finding::rule).toList();
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(path -> String.valueOf(path.getFileName())).sorted().toList();
    }
  }
}
