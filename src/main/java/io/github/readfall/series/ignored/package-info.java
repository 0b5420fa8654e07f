/** Ignored findings of an episode, with reasons. */
@NullMarked
package io.github.readfall.series.ignored;

import org.jspecify.annotations.NullMarked;
