/** The PDF proof for an editor: real text, in reading order. */
@NullMarked
package io.github.readfall.export.pdf;

import org.jspecify.annotations.NullMarked;
