/** The list of findings, and what can be done about each. */
@NullMarked
package io.github.readfall.window.findings;

import org.jspecify.annotations.NullMarked;
