/** Drawings as PNG and SVG files. */
@NullMarked
package io.github.readfall.draw.render;

import org.jspecify.annotations.NullMarked;
