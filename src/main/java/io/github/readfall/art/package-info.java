/** Strip art on disk: pictures read from the top down, never whole. */
@NullMarked
package io.github.readfall.art;

import org.jspecify.annotations.NullMarked;
