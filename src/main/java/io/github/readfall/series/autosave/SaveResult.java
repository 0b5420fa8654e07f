package io.github.readfall.series.autosave;

import java.nio.file.Path;
import java.util.Optional;

/** The result of saving a script. If it is not saved, nothing on disk has changed. */
public sealed interface SaveResult {

  /**
   * It is on disk.
   *
   * @param keptBeside file that keeps the text of others; empty if there was no need
   */
  record Saved(Optional<Path> keptBeside) implements SaveResult {}

  /**
   * Others wrote the file since it was opened or last saved.
   *
   * @param theirs their text; empty where it is not UTF-8, and can be kept but not taken
   * @param sentence that says so
   */
  record ChangedByOthers(Optional<String> theirs, String sentence) implements SaveResult {}

  /**
   * It could not be saved.
   *
   * @param sentence why, and what to do
   * @param wayOn what to offer
   */
  record NotSaved(String sentence, WayOn wayOn) implements SaveResult {}

  /** What a person can do when a script could not be saved. */
  enum WayOn {
    /** The file is gone, its folder is not: {@link OpenText#keepMine} writes it again. */
    WRITE_ANEW,
    /** It cannot be written there: {@link OpenText#copyTo}. */
    SAVE_ELSEWHERE
  }
}
