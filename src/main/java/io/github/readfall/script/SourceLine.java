package io.github.readfall.script;

/**
 * A line of the script exactly as written.
 *
 * @param text without its ending
 * @param ending the characters that end it; empty for a last line that is not ended
 * @param kind of the line
 */
public record SourceLine(String text, String ending, LineKind kind) {}
