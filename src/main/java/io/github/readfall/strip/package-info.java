/** The layout of a strip: panels, balloons, tails and what the person knows of the picture. */
@NullMarked
package io.github.readfall.strip;

import org.jspecify.annotations.NullMarked;
