/** A series on disk: which files belong together, and reading and saving them. */
@NullMarked
package io.github.readfall.series;

import org.jspecify.annotations.NullMarked;
