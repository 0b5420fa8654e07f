package io.github.readfall.script;

/**
 * A line such as {@code Title: The Long Ebb} at the top of a script.
 *
 * @param key as written
 * @param value without the white space round it; lines of a continued one joined by spaces
 * @param line script line on which it begins, from 1
 */
public record Header(String key, String value, int line) {}
