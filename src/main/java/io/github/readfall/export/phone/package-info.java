/** The phone proof: one HTML page with the strip, its findings and its transcript. */
@NullMarked
package io.github.readfall.export.phone;

import org.jspecify.annotations.NullMarked;
