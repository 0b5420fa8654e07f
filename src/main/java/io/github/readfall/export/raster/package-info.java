/** The strip as pictures: whole, in layers of lettering, and in slices. */
@NullMarked
package io.github.readfall.export.raster;

import org.jspecify.annotations.NullMarked;
