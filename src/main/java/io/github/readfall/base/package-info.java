/** What every room needs. */
@NullMarked
package io.github.readfall.base;

import org.jspecify.annotations.NullMarked;
