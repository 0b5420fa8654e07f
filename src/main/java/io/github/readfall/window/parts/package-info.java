/** Small widgets that every part of the window uses. */
@NullMarked
package io.github.readfall.window.parts;

import org.jspecify.annotations.NullMarked;
