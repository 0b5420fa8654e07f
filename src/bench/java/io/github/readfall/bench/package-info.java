/** Benchmarks: ratios against a floor measured in the same run. */
@NullMarked
package io.github.readfall.bench;

import org.jspecify.annotations.NullMarked;
