/**
 * Writing files: one file whole or not at all, sets of files that belong together, and folders.
 * Every file is on the disk before it replaces another.
 */
@NullMarked
package io.github.readfall.base.files;

import org.jspecify.annotations.NullMarked;
