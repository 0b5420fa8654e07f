/** What a person can change of a strip by hand: each change a function of layouts. */
@NullMarked
package io.github.readfall.edits;

import org.jspecify.annotations.NullMarked;
