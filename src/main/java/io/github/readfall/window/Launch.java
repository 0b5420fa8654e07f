package io.github.readfall.window;

import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.window.model.TranslationFiles;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The parameters of the window.
 *
 * @param faces bundled with the program
 * @param stateFolder of the files in which the window remembers its state
 * @param path to open; empty for the episode that was open last
 * @param translations of each episode
 */
public record Launch(
    FontShelf faces, Path stateFolder, Optional<Path> path, TranslationsOf translations) {

  /** Finds the translation files of an episode. */
  @FunctionalInterface
  public interface TranslationsOf {
    /** The translation files of an episode. */
    public TranslationFiles of(EpisodeFiles files);
  }
}
