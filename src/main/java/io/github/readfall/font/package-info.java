/** Faces, their coverage and licence, and shaping. The only place that asks AWT about type. */
@NullMarked
package io.github.readfall.font;

import org.jspecify.annotations.NullMarked;
