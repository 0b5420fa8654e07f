package io.github.readfall.base.files;

import java.io.IOException;
import java.util.List;

/** Files that are made together, in one pass over what they are made from. */
public interface Batch {

  /**
   * The names of the files that will be written, in order. Where how many there are is known only
   * when they are made, those that are certain.
   */
  List<String> names();

  /**
   * Whether a file that lies in the folder was left by an earlier making of the same, and would be
   * taken for a part of this one: a slice, where there are fewer now.
   *
   * @param name of the file; one that is written again does not count
   */
  default boolean isOutdated(String name) {
    return false;
  }

  /** What whoever asked for the files should know of them, one sentence each. */
  default List<String> notes() {
    return List.of();
  }

  /**
   * Makes them. The same input gives the same bytes.
   *
   * @param tray gives out the files to fill
   * @param work is told how far it is, and may end it
   * @throws IOException where a file cannot be written
   * @throws CannotWrite where something else stands in the way, such as a picture that is damaged
   * @throws Cancelled where whoever asked for it wants it no more
   */
  void writeTo(OutputTray tray, Progress work) throws IOException, CannotWrite, Cancelled;
}
