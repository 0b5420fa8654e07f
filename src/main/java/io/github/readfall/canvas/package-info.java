/** The strip and the phone, painted in tiles at any length. */
@NullMarked
package io.github.readfall.canvas;

import org.jspecify.annotations.NullMarked;
