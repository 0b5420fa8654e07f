/** A proof for a real phone: one page with the strip, what was found in it, and its transcript. */
@NullMarked
package io.github.readfall.phone;

import org.jspecify.annotations.NullMarked;
