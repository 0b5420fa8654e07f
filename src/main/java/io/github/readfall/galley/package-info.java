/** The galley: a strip with every balloon set and in its place. */
@NullMarked
package io.github.readfall.galley;

import org.jspecify.annotations.NullMarked;
