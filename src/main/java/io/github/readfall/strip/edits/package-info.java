/** Changes that a person makes to a strip by hand. Each is a function of layouts. */
@NullMarked
package io.github.readfall.strip.edits;

import org.jspecify.annotations.NullMarked;
