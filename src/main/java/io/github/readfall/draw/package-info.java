/** Finished marks at fixed places: the one drawing model behind every picture. */
@NullMarked
package io.github.readfall.draw;

import org.jspecify.annotations.NullMarked;
