package io.github.readfall.strip.json;

/**
 * A part of a layout, and where layout.json has it.
 *
 * @param part what it is
 * @param offset where it begins, in UTF-16 units
 */
record LocatedPart<T>(T part, int offset) {}
