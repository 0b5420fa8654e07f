/** HTML as a tree. Text that people wrote stays text and never becomes markup. */
@NullMarked
package io.github.readfall.export.html;

import org.jspecify.annotations.NullMarked;
