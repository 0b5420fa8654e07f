/** Reading a script file into a script, with everything that is wrong with it. */
@NullMarked
package io.github.readfall.script.read;

import org.jspecify.annotations.NullMarked;
