package io.github.readfall.window.canvas;

/**
 * What it took to paint the visible part of a strip.
 *
 * @param nanos time on the event thread, in nanoseconds
 * @param missingTiles tiles that were not ready or no longer right, and had something stand in
 * @param blankTiles those among them for which there was only paper and the panels' boxes
 */
public record PaintStats(long nanos, int missingTiles, int blankTiles) {}
