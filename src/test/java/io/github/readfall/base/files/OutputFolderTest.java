package io.github.readfall.base.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFolderTest {

  private final Path temp;

  OutputFolderTest(@TempDir Path temp) {
    this.temp = temp;
  }

  @Test
  void everyFileOfEveryBatchIsThereWhenItIsDone() throws Exception {
    Path folder = temp.resolve("new/deep");

    List<Path> files =
        new OutputFolder(folder, false)
            .write(List.of(saying("a", "b.txt"), saying("c", "d.txt")), Progress.UNWATCHED);

    assertEquals(List.of(folder.resolve("b.txt"), folder.resolve("d.txt")), files);
    assertEquals("a", Files.readString(folder.resolve("b.txt")));
    assertEquals("c", Files.readString(folder.resolve("d.txt")));
    assertEquals(List.of("b.txt", "d.txt"), names(folder));
  }

  @Test
  void whatIsThereStaysUnlessItMayBeReplaced() throws Exception {
    Files.writeString(temp.resolve("b.txt"), "old");
    List<Batch> batches = List.of(saying("a", "a.txt"), saying("b", "b.txt"));

    CannotWrite refused =
        assertThrows(
            CannotWrite.class,
            () -> new OutputFolder(temp, false).write(batches, Progress.UNWATCHED));
    assertTrue(refused.getMessage().contains("--replace"), refused.getMessage());
    assertEquals(List.of("b.txt"), names(temp));
    assertEquals("old", Files.readString(temp.resolve("b.txt")));

    List<Path> written = new OutputFolder(temp, true).write(batches, Progress.UNWATCHED);
    assertEquals(2, written.size());
    assertEquals("b", Files.readString(temp.resolve("b.txt")));
  }

  @Test
  void aBatchThatFailsLeavesNothingOfTheOthersEither() throws Exception {
    Files.writeString(temp.resolve("a.txt"), "old");
    Batch full =
        batch(
            List.of("b.txt"),
            (tray, work) -> {
              try (OutputStream out = tray.open("b.txt")) {
                out.write(1);
                throw new IOException("No space left on device");
              }
            });

    CannotWrite failed =
        assertThrows(
            CannotWrite.class,
            () ->
                new OutputFolder(temp, true)
                    .write(List.of(saying("a", "a.txt"), full), Progress.UNWATCHED));

    assertTrue(failed.getMessage().contains("room on the disk"), failed.getMessage());
    assertEquals(List.of("a.txt"), names(temp));
    assertEquals("old", Files.readString(temp.resolve("a.txt")));
  }

  @Test
  void workThatIsEndedLeavesNotEvenAFolder() {
    Path folder = temp.resolve("new");

    assertThrows(
        Cancelled.class,
        () ->
            new OutputFolder(folder, false)
                .write(
                    List.of(saying("a", "a.txt"), saying("b", "b.txt")),
                    (done, of) -> {
                      if (done >= 100) {
                        throw new Cancelled();
                      }
                    }));

    assertFalse(Files.exists(folder));
  }

  @Test
  void progressRisesToTheEnd() throws Exception {
    List<Long> told = new ArrayList<>();

    List<Path> written =
        new OutputFolder(temp, false)
            .write(
                List.of(saying("a", "a.txt"), saying("b", "b.txt")),
                (done, of) -> told.add(100 * done / of));

    assertEquals(2, written.size());
    assertEquals(List.of(25L, 50L, 75L, 100L), told);
  }

  @Test
  void twoFilesOfOneNameAreRefused() {
    List<Batch> twice = List.of(saying("a", "a.txt"), saying("b", "a.txt"));

    assertThrows(CannotWrite.class, () -> new OutputFolder(temp, true).planned(twice));
  }

  @Test
  void aFileIsNoFolder() throws Exception {
    Path file = Files.writeString(temp.resolve("file"), "old");

    CannotWrite refused =
        assertThrows(
            CannotWrite.class,
            () ->
                new OutputFolder(file, true)
                    .write(List.of(saying("a", "a.txt")), Progress.UNWATCHED));

    assertTrue(refused.getMessage().contains("choose a folder"), refused.getMessage());
    assertEquals("old", Files.readString(file));
  }

  @Test
  void everyFileIsOnTheDiskBeforeTheFirstIsMoved() throws Exception {
    Files.writeString(temp.resolve("a.txt"), "old");
    List<String> forced = new ArrayList<>();
    Disk disk =
        new Disk(
            (channel, path) -> {
              channel.force(true);
              String name = Files.isDirectory(path) ? "folder" : Files.readString(path);
              forced.add(name + " while a.txt holds " + Files.readString(temp.resolve("a.txt")));
            });

    List<Path> written =
        new OutputFolder(temp, true)
            .write(List.of(saying("a", "a.txt"), saying("b", "b.txt")), Progress.UNWATCHED, disk);

    assertEquals(2, written.size());
    assertEquals(
        List.of("a while a.txt holds old", "b while a.txt holds old", "folder while a.txt holds a"),
        forced);
  }

  @Test
  void aDiskThatCannotBeForcedKeepsTheOldFiles() throws Exception {
    Files.writeString(temp.resolve("a.txt"), "old");
    Disk disk =
        new Disk(
            (channel, path) -> {
              throw new IOException("Input/output error");
            });

    assertThrows(
        CannotWrite.class,
        () ->
            new OutputFolder(temp, true)
                .write(List.of(saying("a", "a.txt")), Progress.UNWATCHED, disk));

    assertEquals("old", Files.readString(temp.resolve("a.txt")));
    assertEquals(List.of("a.txt"), names(temp));
  }

  private interface Making {
    void make(OutputTray tray, Progress work) throws IOException, CannotWrite, Cancelled;
  }

  private static Batch batch(List<String> names, Making making) {
    return new Batch() {
      @Override
      public List<String> names() {
        return names;
      }

      @Override
      public void writeTo(OutputTray tray, Progress work)
          throws IOException, CannotWrite, Cancelled {
        making.make(tray, work);
      }
    };
  }

  private static Batch saying(String text, String name) {
    return batch(
        List.of(name),
        (tray, work) -> {
          try (OutputStream out = tray.open(name)) {
            out.write(text.getBytes(StandardCharsets.UTF_8));
          }
          work.at(1, 2);
        });
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
