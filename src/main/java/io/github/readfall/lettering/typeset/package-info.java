/** Setting one cue: its size, its lines and the balloon round them. */
@NullMarked
package io.github.readfall.lettering.typeset;

import org.jspecify.annotations.NullMarked;
