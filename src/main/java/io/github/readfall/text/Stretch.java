package io.github.readfall.text;

/**
 * A stretch of one style.
 *
 * @param start first UTF-16 unit
 * @param end one past the last
 * @param faces what it may be set in
 */
public record Stretch(int start, int end, FaceChain faces) {}
