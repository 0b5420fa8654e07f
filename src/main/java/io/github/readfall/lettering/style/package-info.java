/** House style: how each voice and manner is lettered, and for which phones. */
@NullMarked
package io.github.readfall.lettering.style;

import org.jspecify.annotations.NullMarked;
