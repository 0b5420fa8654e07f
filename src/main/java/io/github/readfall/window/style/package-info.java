/** The house style in the window: voices, manners and limits. */
@NullMarked
package io.github.readfall.window.style;

import org.jspecify.annotations.NullMarked;
