package io.github.readfall.script;

/**
 * Consecutive lines of the script.
 *
 * @param first from 1
 * @param last not less than {@code first}
 */
public record LineRange(int first, int last) {}
