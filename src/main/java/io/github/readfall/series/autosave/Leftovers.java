package io.github.readfall.series.autosave;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.concurrent.TimeUnit;

/** Half-written files that a killed program left beside a script, hidden by their leading dot. */
final class Leftovers {

  /** No saving takes that long. House default, no source. */
  private static final long OLD_MILLIS = TimeUnit.HOURS.toMillis(1);

  private Leftovers() {}

  /** Takes those of a script and its side files away. */
  static void sweep(Path script) {
    String name = String.valueOf(script.getFileName());
    int dot = name.lastIndexOf('.');
    String stem = "." + (dot > 0 ? name.substring(0, dot) : name) + ".";
    FileTime old = FileTime.fromMillis(System.currentTimeMillis() - OLD_MILLIS);
    try (DirectoryStream<Path> files =
        Files.newDirectoryStream(
            script.toAbsolutePath().resolveSibling("."),
            file -> isPart(String.valueOf(file.getFileName()), stem))) {
      for (Path file : files) {
        if (Files.getLastModifiedTime(file).compareTo(old) < 0) {
          Files.deleteIfExists(file);
        }
      }
    } catch (IOException | DirectoryIteratorException e) {
      return; // they do no harm
    }
  }

  private static boolean isPart(String name, String stem) {
    return name.startsWith(stem) && name.matches("(?s).*\\.[0-9]+-[0-9]+\\.part");
  }
}
