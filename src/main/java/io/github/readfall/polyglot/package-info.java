/** One episode in several languages: an outline for all, and each in the outlines there are. */
@NullMarked
package io.github.readfall.polyglot;

import org.jspecify.annotations.NullMarked;
