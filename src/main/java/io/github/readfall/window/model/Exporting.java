package io.github.readfall.window.model;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;

/** How far writing a strip out has come. */
public sealed interface Exporting {

  /** Nothing is asked for. */
  record Idle() implements Exporting {}

  /** The strip is being read, set and checked. */
  record Preparing() implements Exporting {}

  /**
   * It can begin.
   *
   * @param files that will be written
   * @param taken those of them that are there already
   */
  record Ready(List<Path> files, Set<Path> taken) implements Exporting {
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
  record Writing(int percent) implements Exporting {}

  /** It is done. */
  record Written(List<Path> files) implements Exporting {
    public Written {
      files = List.copyOf(files);
    }
  }

  /** It cannot be done, or was stopped; nothing was written. */
  record Refused(String sentence) implements Exporting {}
}
