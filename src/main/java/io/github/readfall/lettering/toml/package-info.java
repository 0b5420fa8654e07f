/** Reading TOML with its mistakes, and changing single values in its text. */
@NullMarked
package io.github.readfall.lettering.toml;

import org.jspecify.annotations.NullMarked;
