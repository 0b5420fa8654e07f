/** Pairs what was with what is: two sequences without crossing, and the lines of a script. */
@NullMarked
package io.github.readfall.align;

import org.jspecify.annotations.NullMarked;
