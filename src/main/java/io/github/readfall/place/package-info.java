/** Finds each balloon a place, and each tail its way. */
@NullMarked
package io.github.readfall.place;

import org.jspecify.annotations.NullMarked;
