/** View models: the open episode and everything computed from it. They know no widgets. */
@NullMarked
package io.github.readfall.window.model;

import org.jspecify.annotations.NullMarked;
