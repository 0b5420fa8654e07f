package io.github.readfall.art.panels;

/**
 * A panel of the script and its box in the art.
 *
 * @param number of the panel in the script, from 1
 * @param found its box
 */
public record MatchedPanel(int number, FoundPanel found) {}
