/** Font files: faces, coverage, licence and shaping. The only package that asks AWT about type. */
@NullMarked
package io.github.readfall.type.font;

import org.jspecify.annotations.NullMarked;
