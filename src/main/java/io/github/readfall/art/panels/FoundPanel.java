package io.github.readfall.art.panels;

import io.github.readfall.base.geom.Box;

/**
 * A panel found in the art.
 *
 * @param box round it, in whole strip pixels
 * @param certainty that this is a panel and these are its edges, from 0 to 1
 * @param reason for the certainty, in a few words
 */
public record FoundPanel(Box box, double certainty, String reason) {}
