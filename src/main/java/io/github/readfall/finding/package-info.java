/** What was found to be wrong, where, and how to mend it. */
@NullMarked
package io.github.readfall.finding;

import org.jspecify.annotations.NullMarked;
