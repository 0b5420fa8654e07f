/** The help window: keys, rules and cautions. */
@NullMarked
package io.github.readfall.window.help;

import org.jspecify.annotations.NullMarked;
