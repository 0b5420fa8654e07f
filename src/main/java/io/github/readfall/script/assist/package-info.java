/** Help while a script is typed: the parts of each line, and what may be written at the caret. */
@NullMarked
package io.github.readfall.script.assist;

import org.jspecify.annotations.NullMarked;
