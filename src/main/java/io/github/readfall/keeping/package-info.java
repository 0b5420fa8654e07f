/**
 * What was typed is kept: saving, the copy that survives a fall, changes by others, and what the
 * window remembers.
 */
@NullMarked
package io.github.readfall.keeping;

import org.jspecify.annotations.NullMarked;
