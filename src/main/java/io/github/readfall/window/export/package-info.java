/** The export dialog. */
@NullMarked
package io.github.readfall.window.export;

import org.jspecify.annotations.NullMarked;
