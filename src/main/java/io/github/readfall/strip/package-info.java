/** The layout of a strip: panels, balloons, tails and what the person knows about the picture. */
@NullMarked
package io.github.readfall.strip;

import org.jspecify.annotations.NullMarked;
