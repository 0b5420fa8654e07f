/** The window. */
@NullMarked
package io.github.readfall.app;

import org.jspecify.annotations.NullMarked;
