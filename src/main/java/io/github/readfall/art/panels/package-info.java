/**
 * Finding panel boxes in strip art and matching them to the script. Lengths in cells are named so.
 */
@NullMarked
package io.github.readfall.art.panels;

import org.jspecify.annotations.NullMarked;
