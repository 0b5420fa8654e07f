/** What mouse and keys mean on a strip: what they take hold of, and the change they make. */
@NullMarked
package io.github.readfall.gesture;

import org.jspecify.annotations.NullMarked;
