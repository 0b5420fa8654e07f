/** Reading and writing layout.json. */
@NullMarked
package io.github.readfall.strip.json;

import org.jspecify.annotations.NullMarked;
