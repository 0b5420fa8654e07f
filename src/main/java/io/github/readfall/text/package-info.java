/** Text made ready for lines: language rules, capitals, break opportunities, measured segments. */
@NullMarked
package io.github.readfall.text;

import org.jspecify.annotations.NullMarked;
