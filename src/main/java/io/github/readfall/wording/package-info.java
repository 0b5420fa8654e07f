/** The words of the window, all in one file. */
@NullMarked
package io.github.readfall.wording;

import org.jspecify.annotations.NullMarked;
