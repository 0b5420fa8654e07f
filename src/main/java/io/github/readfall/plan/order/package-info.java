/** Reading order: the path of the eye down a strip, and where it differs from the script. */
@NullMarked
package io.github.readfall.plan.order;

import org.jspecify.annotations.NullMarked;
