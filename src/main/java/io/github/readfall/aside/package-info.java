/** Findings that the person has looked at and left as they are, with the reason. */
@NullMarked
package io.github.readfall.aside;

import org.jspecify.annotations.NullMarked;
