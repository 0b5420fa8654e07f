/** The strip and the phone, painted in tiles at any length, and the episode at a glance. */
@NullMarked
package io.github.readfall.canvas;

import org.jspecify.annotations.NullMarked;
