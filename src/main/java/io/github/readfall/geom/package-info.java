/**
 * Points, boxes and outlines. Lengths are strip pixels, y downwards, unless a name says otherwise.
 */
@NullMarked
package io.github.readfall.geom;

import org.jspecify.annotations.NullMarked;
