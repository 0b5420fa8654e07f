package io.github.readfall.base.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SafeFileTest {

  private final Path folder;
  private final Path file;

  SafeFileTest(@TempDir Path folder) {
    this.folder = folder;
    this.file = folder.resolve("some.txt");
  }

  @Test
  void aNewFileIsWritten() throws Exception {
    SafeFile.write(file, out -> out.write(bytes("new")));
    assertEquals("new", Files.readString(file));
    assertEquals(List.of("some.txt"), names());
  }

  @Test
  void aLongerOldFileIsReplacedWhole() throws Exception {
    Files.writeString(file, "much longer than what comes");
    SafeFile.write(file, out -> out.write(bytes("new")));
    assertEquals("new", Files.readString(file));
  }

  @Test
  void aFailureInTheMiddleKeepsTheOldBytesAndLeavesNothingBeside() throws IOException {
    Files.writeString(file, "old");
    UnusablePath refusal =
        assertThrows(
            UnusablePath.class,
            () ->
                SafeFile.write(
                    file,
                    out -> {
                      out.write(new byte[100_000]);
                      throw new IOException("the disk is full");
                    }));
    assertTrue(refusal.getMessage().contains("could not be written"), refusal.getMessage());
    assertEquals("old", Files.readString(file));
    assertEquals(List.of("some.txt"), names());
  }

  @Test
  void aFaultInTheMiddleKeepsTheOldBytesToo() throws IOException {
    Files.writeString(file, "old");
    assertThrows(
        IllegalStateException.class,
        () ->
            SafeFile.write(
                file,
                out -> {
                  out.write(1);
                  throw new IllegalStateException("a bug");
                }));
    assertEquals("old", Files.readString(file));
    assertEquals(List.of("some.txt"), names());
  }

  @Test
  void nobodySeesAHalfWrittenFile() throws Exception {
    Files.writeString(file, "old");
    SafeFile.write(
        file,
        out -> {
          out.write(bytes("half"));
          out.flush();
          assertEquals("old", Files.readString(file));
          out.write(bytes(" and half"));
        });
    assertEquals("half and half", Files.readString(file));
  }

  @Test
  void whoMayReadItStaysTheSame() throws Exception {
    Files.writeString(file, "old");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-r-x"));
    SafeFile.write(file, out -> out.write(bytes("new")));
    assertEquals("rw-rw-r-x", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
  }

  @Test
  void aLinkStaysALinkAndItsTargetIsWritten() throws Exception {
    Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
    Path target = Files.writeString(elsewhere.resolve("target.txt"), "old");
    Files.createSymbolicLink(file, target);
    SafeFile.write(file, out -> out.write(bytes("new")));
    assertTrue(Files.isSymbolicLink(file));
    assertEquals("new", Files.readString(target));
    assertEquals(List.of("elsewhere", "some.txt"), names());
  }

  @Test
  void aLinkToNothingStaysALinkToo() throws Exception {
    Path target = folder.resolve("later.txt");
    Files.createSymbolicLink(file, target.getFileName());
    SafeFile.write(file, out -> out.write(bytes("new")));
    assertTrue(Files.isSymbolicLink(file));
    assertEquals("new", Files.readString(target));
  }

  @Test
  void aFolderIsRefusedByName() throws IOException {
    Files.createDirectory(file);
    UnusablePath refusal =
        assertThrows(UnusablePath.class, () -> SafeFile.write(file, out -> out.write(1)));
    assertEquals(file + " is a folder: name a file in it.", refusal.getMessage());
    assertEquals(List.of("some.txt"), names());
  }

  @Test
  void aFolderThatIsNotThereIsRefused() throws IOException {
    Path lost = folder.resolve("none").resolve("some.txt");
    assertThrows(UnusablePath.class, () -> SafeFile.write(lost, out -> out.write(1)));
    assertEquals(List.of(), names());
  }

  @Test
  void aFileIsOnTheDiskBeforeItReplacesAnotherAndItsFolderAfterwards() throws Exception {
    Files.writeString(file, "old");
    List<String> forced = new ArrayList<>();
    Disk disk =
        new Disk(
            (channel, path) -> {
              channel.force(true);
              boolean isFolder = Files.isDirectory(path);
              String text = isFolder ? "folder" : Files.readString(path);
              forced.add(text + " while the file holds " + Files.readString(file));
            });

    assertTrue(SafeFile.writeIf(file, out -> out.write(bytes("new")), () -> true, disk));

    assertEquals(
        List.of("new while the file holds old", "folder while the file holds new"), forced);
  }

  @Test
  void aDiskThatCannotBeForcedKeepsTheOldBytes() throws Exception {
    Files.writeString(file, "old");
    Disk disk =
        new Disk(
            (channel, path) -> {
              throw new IOException("Input/output error");
            });

    assertThrows(
        UnusablePath.class,
        () -> SafeFile.writeIf(file, out -> out.write(bytes("new")), () -> true, disk));

    assertEquals("old", Files.readString(file));
    assertEquals(List.of("some.txt"), names());
  }

  @Test
  void aNameIsReservedOnce() throws Exception {
    assertTrue(SafeFile.reserve(file));
    assertFalse(SafeFile.reserve(file));
    assertEquals("", Files.readString(file));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(path -> String.valueOf(path.getFileName())).sorted().toList();
    }
  }
}
