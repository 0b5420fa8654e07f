package io.github.readfall.art;

import io.github.readfall.geom.Box;
import java.nio.file.Path;

/**
 * A page of art in its place on the strip.
 *
 * @param file where it lies
 * @param widthPx of the file, in its own pixels
 * @param heightPx of the file, in its own pixels
 * @param box on the strip, as wide as the strip, in whole strip pixels
 */
public record ArtPage(Path file, int widthPx, int heightPx, Box box) {}
