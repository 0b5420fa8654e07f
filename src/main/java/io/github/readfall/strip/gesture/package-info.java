/** Pointer gestures on a strip: what they grip, and the change they make. */
@NullMarked
package io.github.readfall.strip.gesture;

import org.jspecify.annotations.NullMarked;
