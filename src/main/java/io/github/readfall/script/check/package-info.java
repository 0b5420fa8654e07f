/**
 * Checks of a script that need no lettering: typos, stray lines, characters that cannot be
 * lettered.
 */
@NullMarked
package io.github.readfall.script.check;

import org.jspecify.annotations.NullMarked;
