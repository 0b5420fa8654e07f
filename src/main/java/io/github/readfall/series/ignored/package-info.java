/** Findings that the person ignores, with reasons. */
@NullMarked
package io.github.readfall.series.ignored;

import org.jspecify.annotations.NullMarked;
