/** XML whose text is changed in place, so that nothing else in the file changes. */
@NullMarked
package io.github.readfall.languages.xml;

import org.jspecify.annotations.NullMarked;
