package io.github.readfall.window.script;

/**
 * A range of the text as it is shown.
 *
 * @param start offset of its first UTF-16 unit
 * @param end the offset after its last; not less than {@code start}
 */
record TextRange(int start, int end) {}
