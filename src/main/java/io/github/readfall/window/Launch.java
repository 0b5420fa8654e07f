package io.github.readfall.window;

import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.window.model.TranslationFiles;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What the window starts with.
 *
 * @param faces those that come with the program
 * @param stateFolder where the window keeps what it remembers
 * @param path what to open; empty for what was open last
 * @param translations where those of an episode are kept
 */
public record Launch(
    FontShelf faces, Path stateFolder, Optional<Path> path, TranslationsOf translations) {

  /** Knows where the translations of an episode are kept. */
  @FunctionalInterface
  public interface TranslationsOf {
    /** The translations of an episode. */
    public TranslationFiles of(EpisodeFiles files);
  }
}
