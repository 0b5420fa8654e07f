/** Opening, saving and leaving episodes. */
@NullMarked
package io.github.readfall.window.workplace;

import org.jspecify.annotations.NullMarked;
