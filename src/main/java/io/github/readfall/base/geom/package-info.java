/**
 * Points, boxes and outlines. Lengths are strip pixels, y downwards, unless a name says otherwise.
 */
@NullMarked
package io.github.readfall.base.geom;

import org.jspecify.annotations.NullMarked;
