/** The drawing model behind every picture: finished marks at fixed places. */
@NullMarked
package io.github.readfall.draw;

import org.jspecify.annotations.NullMarked;
