/** Pairs an earlier script with the present one: lines that stayed, changed, came and went. */
@NullMarked
package io.github.readfall.script.align;

import org.jspecify.annotations.NullMarked;
