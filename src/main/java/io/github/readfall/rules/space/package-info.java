/** Rules about balloons, tails and cuts that touch, cover or miss something, and fixes for them. */
@NullMarked
package io.github.readfall.rules.space;

import org.jspecify.annotations.NullMarked;
