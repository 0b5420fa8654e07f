package io.github.readfall.window.model;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;

/** How far writing a strip out has come. */
public sealed interface ExportProgress {

  /** Nothing is asked for. */
  record Idle() implements ExportProgress {}

  /** The strip is being read, set and checked. */
  record Preparing() implements ExportProgress {}

  /**
   * It can begin.
   *
   * @param files that will be written
   * @param taken those of them that are there already
   */
  record Ready(List<Path> files, Set<Path> taken) implements ExportProgress {
    public Ready {
      files = List.copyOf(files);
      taken = Set.copyOf(taken);
    }
  }

  /**
   * It is under way.
   *
   * @param percent from 0 to 100
   */
  record Writing(int percent) implements ExportProgress {}

  /** It is done. */
  record Written(List<Path> files) implements ExportProgress {
    public Written {
      files = List.copyOf(files);
    }
  }

  /** It cannot be done, or was stopped; nothing was written. */
  record Refused(String sentence) implements ExportProgress {}
}
