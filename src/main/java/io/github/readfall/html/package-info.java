/** HTML as a tree, and how it is written down: what people wrote is text in it, never markup. */
@NullMarked
package io.github.readfall.html;

import org.jspecify.annotations.NullMarked;
