/** Translations in the window: the panel for one cue and the matrix of all. */
@NullMarked
package io.github.readfall.window.languages;

import org.jspecify.annotations.NullMarked;
