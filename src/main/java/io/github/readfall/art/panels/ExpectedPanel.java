package io.github.readfall.art.panels;

import io.github.readfall.base.geom.Box;
import io.github.readfall.script.Panel;
import java.util.Optional;

/**
 * A panel of the script, and what is expected of its box in the art.
 *
 * @param panel as in the script
 * @param balloonsPx2 the area of its balloons, in square strip pixels
 * @param widestPx the width of the widest of them, in strip pixels; 0 if there is none
 * @param before its former box in the layout, if it had one
 */
public record ExpectedPanel(
    Panel panel, double balloonsPx2, double widestPx, Optional<Box> before) {}
