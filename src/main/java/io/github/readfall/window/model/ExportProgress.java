package io.github.readfall.window.model;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;

/** The progress of an export. */
public sealed interface ExportProgress {

  /** Nothing is ordered. */
  record Idle() implements ExportProgress {}

  /** The strip is being read, set and checked. */
  record Preparing() implements ExportProgress {}

  /**
   * The export can begin.
   *
   * @param files that will be written
   * @param taken those of them that exist already
   */
  record Ready(List<Path> files, Set<Path> taken) implements ExportProgress {
    public Ready {
      files = List.copyOf(files);
      taken = Set.copyOf(taken);
    }
  }

  /**
   * Files are being written.
   *
   * @param percent from 0 to 100
   */
  record Writing(int percent) implements ExportProgress {}

  /** The export is complete. */
  record Written(List<Path> files) implements ExportProgress {
    public Written {
      files = List.copyOf(files);
    }
  }

  /** The export is not possible, or was cancelled; nothing was written. */
  record Refused(String sentence) implements ExportProgress {}
}
