package io.github.readfall.series.autosave;

import java.nio.file.Path;
import java.util.Optional;

/** What came of taking what others wrote. */
public sealed interface ReloadResult {

  /**
   * Theirs counts now.
   *
   * @param text theirs
   * @param keptBeside where mine is kept; empty where all of mine had been saved before
   */
  record Taken(String text, Optional<Path> keptBeside) implements ReloadResult {}

  /**
   * Theirs cannot be had, or mine not be kept; nothing has changed.
   *
   * @param sentence why, and how to go on
   */
  record NotTaken(String sentence) implements ReloadResult {}
}
