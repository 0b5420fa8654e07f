package io.github.readfall.app;

import io.github.readfall.font.FontShelf;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What the window starts with.
 *
 * @param faces those that come with the program
 * @param home the folder the program lies in, with the sample in it
 * @param path what to open; empty for what was open last
 */
public record Launch(FontShelf faces, Path home, Optional<Path> path) {}
