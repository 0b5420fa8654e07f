/** The script, as it is written in the window. */
@NullMarked
package io.github.readfall.editor;

import org.jspecify.annotations.NullMarked;
