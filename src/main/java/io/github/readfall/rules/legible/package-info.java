/** Rules about whether letters can be read on a phone, and how small or tight they may be. */
@NullMarked
package io.github.readfall.rules.legible;

import org.jspecify.annotations.NullMarked;
