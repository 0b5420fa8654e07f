package io.github.readfall.lettering.typeset;

import io.github.readfall.type.text.TextLine;

/**
 * A line in its place.
 *
 * @param line the shaped line
 * @param xPx its left end, whichever way it reads
 * @param baselinePx its baseline
 */
public record SetLine(TextLine line, double xPx, double baselinePx) {}
