/** The command line: reads options, calls the job, and returns an exit status. */
@NullMarked
package io.github.readfall.cli;

import org.jspecify.annotations.NullMarked;
