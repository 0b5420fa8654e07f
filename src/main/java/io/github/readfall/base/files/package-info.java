/** Writing files: one file whole or not at all, and sets of files that belong together. */
@NullMarked
package io.github.readfall.base.files;

import org.jspecify.annotations.NullMarked;
