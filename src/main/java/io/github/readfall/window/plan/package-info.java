/** The plan in the window: figures, the overview and the parts of a split. */
@NullMarked
package io.github.readfall.window.plan;

import org.jspecify.annotations.NullMarked;
