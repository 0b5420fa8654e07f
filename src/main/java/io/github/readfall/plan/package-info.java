/** How tall a strip must be, how long it takes to read, and where to cut and split it. */
@NullMarked
package io.github.readfall.plan;

import org.jspecify.annotations.NullMarked;
