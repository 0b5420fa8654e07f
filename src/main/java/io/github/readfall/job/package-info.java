/** The whole job: an episode read, set, placed and checked. */
@NullMarked
package io.github.readfall.job;

import org.jspecify.annotations.NullMarked;
