/** Translations in XLIFF 2.1, the exchange format of OASIS, with its size restriction module. */
@NullMarked
package io.github.readfall.languages.xliff;

import org.jspecify.annotations.NullMarked;
