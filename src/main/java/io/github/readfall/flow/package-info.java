/** How the eye goes down a strip, and where that is not the order of the script. */
@NullMarked
package io.github.readfall.flow;

import org.jspecify.annotations.NullMarked;
