/**
 * Planning an episode: how tall the strip is, how long it takes to read, where to cut and split it.
 */
@NullMarked
package io.github.readfall.plan;

import org.jspecify.annotations.NullMarked;
