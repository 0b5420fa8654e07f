/** The galley: a strip with every balloon set and in its place. */
@NullMarked
package io.github.readfall.strip.galley;

import org.jspecify.annotations.NullMarked;
