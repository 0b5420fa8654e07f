/** The phone column, true size, and the table of readers. */
@NullMarked
package io.github.readfall.window.phone;

import org.jspecify.annotations.NullMarked;
