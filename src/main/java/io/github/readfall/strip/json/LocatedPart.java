package io.github.readfall.strip.json;

/**
 * A part of a layout, and its place in layout.json.
 *
 * @param part the panel or balloon
 * @param offset where it begins, in UTF-16 units
 */
record LocatedPart<T>(T part, int offset) {}
