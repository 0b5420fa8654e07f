/** Everything that a finished strip can be exported as, in batches of files. */
@NullMarked
package io.github.readfall.export;

import org.jspecify.annotations.NullMarked;
