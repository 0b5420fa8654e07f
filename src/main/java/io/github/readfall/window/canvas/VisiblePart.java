package io.github.readfall.window.canvas;

/**
 * The part of a strip that can be seen.
 *
 * @param topPx in strip pixels
 * @param bottomPx in strip pixels; not less than {@code topPx}
 */
public record VisiblePart(double topPx, double bottomPx) {}
