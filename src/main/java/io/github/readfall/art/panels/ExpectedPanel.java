package io.github.readfall.art.panels;

import io.github.readfall.base.geom.Box;
import io.github.readfall.script.Panel;
import java.util.Optional;

/**
 * What is known of a panel of the script before it is found in the art.
 *
 * @param panel as the script has it
 * @param balloonsPx2 the area of the balloons that go into it, in square strip pixels
 * @param widestPx the width of the widest of them, in strip pixels; 0 where there is none
 * @param before where the layout had it so far, if it did
 */
public record ExpectedPanel(
    Panel panel, double balloonsPx2, double widestPx, Optional<Box> before) {}
