/** One cue, one voice, one phone: the balloon with its lines set inside. */
@NullMarked
package io.github.readfall.typeset;

import org.jspecify.annotations.NullMarked;
