package io.github.readfall.plan;

/**
 * A panel in the pace of the strip.
 *
 * @param panel its place in the script, from 1
 * @param heightPx in strip pixels
 * @param gutterPx free above it, in strip pixels; 0 beside or inside another
 * @param words in it
 * @param seconds needed to read them
 */
public record PanelPace(int panel, double heightPx, double gutterPx, int words, double seconds) {}
