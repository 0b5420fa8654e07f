/** Writes files that belong together into a folder: all of them, or none. */
@NullMarked
package io.github.readfall.outbox;

import org.jspecify.annotations.NullMarked;
