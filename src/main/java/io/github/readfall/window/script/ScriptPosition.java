package io.github.readfall.window.script;

/**
 * A position in the script.
 *
 * @param line from 1
 * @param column in that line, in code points from 1
 */
public record ScriptPosition(int line, int column) {}
