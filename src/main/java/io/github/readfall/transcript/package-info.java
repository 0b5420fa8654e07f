/** What an episode says and shows, in words: plain text, or HTML that screen readers read. */
@NullMarked
package io.github.readfall.transcript;

import org.jspecify.annotations.NullMarked;
