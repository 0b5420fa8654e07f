/**
 * Finds the boxes of a strip's panels in its art, and which panel of the script each is. Lengths in
 * cells are said to be; all others are strip pixels.
 */
@NullMarked
package io.github.readfall.panels;

import org.jspecify.annotations.NullMarked;
