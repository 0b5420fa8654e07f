/** x. */
@NullMarked
package io.github.readfall.rules;

import org.jspecify.annotations.NullMarked;
