/** Transcripts: what an episode says and shows, as plain text and as HTML. */
@NullMarked
package io.github.readfall.export.transcript;

import org.jspecify.annotations.NullMarked;
