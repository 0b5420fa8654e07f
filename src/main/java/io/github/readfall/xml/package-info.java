/** XML that is changed where it must be and stays as it was written everywhere else. */
@NullMarked
package io.github.readfall.xml;

import org.jspecify.annotations.NullMarked;
