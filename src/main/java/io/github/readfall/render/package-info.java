/** Drawings to bytes: PNG and SVG. */
@NullMarked
package io.github.readfall.render;

import org.jspecify.annotations.NullMarked;
