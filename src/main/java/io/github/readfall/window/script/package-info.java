/** The script editor. */
@NullMarked
package io.github.readfall.window.script;

import org.jspecify.annotations.NullMarked;
