package io.github.readfall.type.balloon;

import io.github.readfall.type.text.LineTable;

/**
 * A text that is to go into an outline.
 *
 * @param table every line that could be set; not empty
 * @param rules the outline keeps to
 */
public record FitText(LineTable table, FitRules rules) {}
