/** The JSON report, and the tables that people read. */
@NullMarked
package io.github.readfall.cli.report;

import org.jspecify.annotations.NullMarked;
