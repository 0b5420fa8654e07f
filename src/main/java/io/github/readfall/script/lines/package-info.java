/** The lines of a script: what each line is, and the heads of cues, panels and headers. */
@NullMarked
package io.github.readfall.script.lines;

import org.jspecify.annotations.NullMarked;
