/** Scripts in other languages: what each cue says there, and how far that has come. */
@NullMarked
package io.github.readfall.translate;

import org.jspecify.annotations.NullMarked;
