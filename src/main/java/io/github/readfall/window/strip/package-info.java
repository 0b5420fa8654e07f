/** Editing the strip by hand: selection, pointer, keys and menus. */
@NullMarked
package io.github.readfall.window.strip;

import org.jspecify.annotations.NullMarked;
