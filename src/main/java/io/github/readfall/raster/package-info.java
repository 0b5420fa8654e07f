/** A finished strip as pictures: whole, as lettering in layers, and in slices. */
@NullMarked
package io.github.readfall.raster;

import org.jspecify.annotations.NullMarked;
