/**
 * The strip as laid out: panels, and what the person knows of the picture. It is what layout.json
 * says.
 */
@NullMarked
package io.github.readfall.strip;

import org.jspecify.annotations.NullMarked;
