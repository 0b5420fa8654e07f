/**
 * Reference texts that every language has, and what is measured on them: lengths, budgets, stand-
 * ins.
 */
@NullMarked
package io.github.readfall.languages.reference;

import org.jspecify.annotations.NullMarked;
