/** The whole job, once: an episode read, set and checked. */
@NullMarked
package io.github.readfall.proof;

import org.jspecify.annotations.NullMarked;
