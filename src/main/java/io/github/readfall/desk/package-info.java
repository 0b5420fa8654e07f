/**
 * What lies on the desk: the open episode, what was worked out from it, and what is looked at. No
 * widget.
 */
@NullMarked
package io.github.readfall.desk;

import org.jspecify.annotations.NullMarked;
