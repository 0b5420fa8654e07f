/** Autosave: unsaved text that survives a crash, changes by others, and the state of the window. */
@NullMarked
package io.github.readfall.series.autosave;

import org.jspecify.annotations.NullMarked;
