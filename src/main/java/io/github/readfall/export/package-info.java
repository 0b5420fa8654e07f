/** Everything that a finished strip can be made into, as batches of files. */
@NullMarked
package io.github.readfall.export;

import org.jspecify.annotations.NullMarked;
