package io.github.readfall.type.text;

/**
 * A stretch of one style.
 *
 * @param start first UTF-16 unit
 * @param end one past the last
 * @param faces it may be set in
 */
public record StyledText(int start, int end, FaceChain faces) {}
