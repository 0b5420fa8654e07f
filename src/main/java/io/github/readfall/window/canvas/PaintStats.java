package io.github.readfall.window.canvas;

/**
 * Figures of one painting of the visible part of a strip.
 *
 * @param nanos time on the event thread, in nanoseconds
 * @param missingTiles tiles that were not ready or out of date, and had a stand-in
 * @param blankTiles those of them whose stand-in was paper and the panels' boxes alone
 */
public record PaintStats(long nanos, int missingTiles, int blankTiles) {}
