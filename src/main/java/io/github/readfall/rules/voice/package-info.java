/** Rules about voices, within an episode and through a series. */
@NullMarked
package io.github.readfall.rules.voice;

import org.jspecify.annotations.NullMarked;
