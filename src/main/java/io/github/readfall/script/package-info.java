/** The script: what is said, by whom, how, and in which panel. */
@NullMarked
package io.github.readfall.script;

import org.jspecify.annotations.NullMarked;
