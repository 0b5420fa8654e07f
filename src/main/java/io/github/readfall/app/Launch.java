package io.github.readfall.app;

import io.github.readfall.font.FontShelf;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What the window starts with.
 *
 * @param faces those that come with the program
 * @param stateFolder where the window keeps what it remembers
 * @param path what to open; empty for what was open last
 */
public record Launch(FontShelf faces, Path stateFolder, Optional<Path> path) {}
