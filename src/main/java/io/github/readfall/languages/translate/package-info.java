/** Translations of a script: what each cue says in another language, and how far that has come. */
@NullMarked
package io.github.readfall.languages.translate;

import org.jspecify.annotations.NullMarked;
