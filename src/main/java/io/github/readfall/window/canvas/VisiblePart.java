package io.github.readfall.window.canvas;

/**
 * The visible part of a strip.
 *
 * @param topPx in strip pixels
 * @param bottomPx in strip pixels; not less than {@code topPx}
 */
public record VisiblePart(double topPx, double bottomPx) {}
