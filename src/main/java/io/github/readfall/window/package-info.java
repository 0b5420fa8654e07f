/** The main window: its frame, its menus, and the controllers that connect its parts. */
@NullMarked
package io.github.readfall.window;

import org.jspecify.annotations.NullMarked;
