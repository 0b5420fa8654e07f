/** The command line: options in, stages called, exit status out. */
@NullMarked
package io.github.readfall.cli;

import org.jspecify.annotations.NullMarked;
