/** The JSON report and the table a person reads. */
@NullMarked
package io.github.readfall.report;

import org.jspecify.annotations.NullMarked;
