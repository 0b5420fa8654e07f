/** Viewing a strip: phones, viewing distance, visual angle, contrast. */
@NullMarked
package io.github.readfall.base.viewing;

import org.jspecify.annotations.NullMarked;
