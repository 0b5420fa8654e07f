package io.github.readfall.export.html;

/**
 * Words between tags.
 *
 * @param words as they are to be read, not escaped
 */
public record Text(String words) implements Node {}
