/** The words of the window, all in one file. */
@NullMarked
package io.github.readfall.base.wording;

import org.jspecify.annotations.NullMarked;
