/** What rules share: their ids and limits, the strip under check, and the wording of findings. */
@NullMarked
package io.github.readfall.rules.model;

import org.jspecify.annotations.NullMarked;
