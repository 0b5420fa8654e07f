package io.github.readfall.window.canvas;

import io.github.readfall.base.geom.XY;

/**
 * Where the pointer is on a strip.
 *
 * @param at in strip pixels
 * @param reachPx how far from a grip it still is on it, in strip pixels
 * @param addsToSelection whether what it is on is meant as well as what is chosen
 * @param isStraight whether it is to go straight up or across
 */
public record StripPointerEvent(
    XY at, double reachPx, boolean addsToSelection, boolean isStraight) {}
