package io.github.readfall.lettering.typeset;

import io.github.readfall.type.text.TextLine;

/**
 * A line in its place.
 *
 * @param line the shaped line
 * @param xPx where its left end is, whichever way it reads
 * @param baselinePx where its baseline is
 */
public record SetLine(TextLine line, double xPx, double baselinePx) {}
