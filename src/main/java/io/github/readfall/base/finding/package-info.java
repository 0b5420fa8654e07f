/** Findings: what is wrong, where it is, and how to fix it. */
@NullMarked
package io.github.readfall.base.finding;

import org.jspecify.annotations.NullMarked;
