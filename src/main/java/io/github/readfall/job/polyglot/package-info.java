/**
 * One episode in several languages: shared outlines, and translations in outlines that are given.
 */
@NullMarked
package io.github.readfall.job.polyglot;

import org.jspecify.annotations.NullMarked;
