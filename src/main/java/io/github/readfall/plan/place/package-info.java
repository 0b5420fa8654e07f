/** Placing balloons and their tails. */
@NullMarked
package io.github.readfall.plan.place;

import org.jspecify.annotations.NullMarked;
