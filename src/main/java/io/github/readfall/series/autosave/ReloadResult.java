package io.github.readfall.series.autosave;

import java.nio.file.Path;
import java.util.Optional;

/** The result of taking the text that others wrote. */
public sealed interface ReloadResult {

  /**
   * The text of others is the present one.
   *
   * @param text theirs
   * @param keptBeside file that keeps mine; empty if all of mine had been saved before
   */
  record Taken(String text, Optional<Path> keptBeside) implements ReloadResult {}

  /**
   * Theirs cannot be had, or mine not be kept; nothing has changed.
   *
   * @param sentence why, and how to go on
   */
  record NotTaken(String sentence) implements ReloadResult {}
}
