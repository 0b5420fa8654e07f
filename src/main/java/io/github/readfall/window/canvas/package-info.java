/** Painting of strips: in tiles at any zoom, on a phone, and as an overview. */
@NullMarked
package io.github.readfall.window.canvas;

import org.jspecify.annotations.NullMarked;
