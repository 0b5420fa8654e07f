/** Balloon outlines and tails, and fitting the smallest outline round a stack of lines. */
@NullMarked
package io.github.readfall.type.balloon;

import org.jspecify.annotations.NullMarked;
