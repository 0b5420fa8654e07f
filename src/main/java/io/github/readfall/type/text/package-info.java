/** Text prepared for lines: language rules, capitals, break opportunities, measured segments. */
@NullMarked
package io.github.readfall.type.text;

import org.jspecify.annotations.NullMarked;
