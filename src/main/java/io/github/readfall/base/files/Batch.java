package io.github.readfall.base.files;

import java.io.IOException;
import java.util.List;

/** Files that are made together, in one pass over their source. */
public interface Batch {

  /**
   * Returns the names of the files that will be written, in order. If their number is known only
   * when they are made, returns those that are certain.
   */
  List<String> names();

  /**
   * Tests whether a file in the folder was left by an earlier export and could be mistaken for part
   * of this one: slice 9, when there are only eight slices now.
   *
   * @param name of the file; one that is written again does not count
   */
  default boolean isOutdated(String name) {
    return false;
  }

  /** Returns remarks about the files for the person who exports them, one sentence each. */
  default List<String> notes() {
    return List.of();
  }

  /**
   * Writes the files. The same input gives the same bytes.
   *
   * @param tray opens the files
   * @param work receives the progress, and may cancel the work
   * @throws IOException if a file cannot be written
   * @throws CannotWrite if something else is wrong, such as a damaged picture
   * @throws Cancelled if the work was cancelled
   */
  void writeTo(OutputTray tray, Progress work) throws IOException, CannotWrite, Cancelled;
}
