/** Rules about how many words a balloon, a screen and a stretch of scroll hold. */
@NullMarked
package io.github.readfall.rules.words;

import org.jspecify.annotations.NullMarked;
