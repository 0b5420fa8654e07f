/** Matches a saved layout to the present script. */
@NullMarked
package io.github.readfall.strip.anchor;

import org.jspecify.annotations.NullMarked;
