/** A series on disk: which files belong together, reading them, and saving without half-writing. */
@NullMarked
package io.github.readfall.series;

import org.jspecify.annotations.NullMarked;
