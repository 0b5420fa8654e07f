package io.github.readfall.plan;

/**
 * A panel in the flow of the strip.
 *
 * @param panel its place in the script, from 1
 * @param heightPx in strip pixels
 * @param gutterPx free above it, in strip pixels; 0 beside or in another
 * @param words met in it
 * @param seconds they are read
 */
public record PanelPace(int panel, double heightPx, double gutterPx, int words, double seconds) {}
