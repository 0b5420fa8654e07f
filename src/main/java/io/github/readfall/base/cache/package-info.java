/** Caches with a limit. */
@NullMarked
package io.github.readfall.base.cache;

import org.jspecify.annotations.NullMarked;
