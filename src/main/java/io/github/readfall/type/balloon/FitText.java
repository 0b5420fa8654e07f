package io.github.readfall.type.balloon;

import io.github.readfall.type.text.LineTable;

/**
 * A text to be fitted into an outline.
 *
 * @param table every line that could be set; not empty
 * @param rules of the outline
 */
public record FitText(LineTable table, FitRules rules) {}
