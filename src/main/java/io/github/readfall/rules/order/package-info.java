/** Rules about the order in which a strip is read. */
@NullMarked
package io.github.readfall.rules.order;

import org.jspecify.annotations.NullMarked;
