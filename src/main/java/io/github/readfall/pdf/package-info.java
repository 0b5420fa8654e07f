/** A strip on paper for an editor: PDF with real text, read in the order of the script. */
@NullMarked
package io.github.readfall.pdf;

import org.jspecify.annotations.NullMarked;
