/** What is wrong with set lettering: every rule, one a file. */
@NullMarked
package io.github.readfall.rules;

import org.jspecify.annotations.NullMarked;
