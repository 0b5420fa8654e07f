/** Every rule about a finished strip, one class each. */
@NullMarked
package io.github.readfall.rules;

import org.jspecify.annotations.NullMarked;
