package io.github.readfall.window.canvas;

import io.github.readfall.base.geom.XY;

/**
 * The position and meaning of a pointer on a strip.
 *
 * @param at in strip pixels
 * @param reachPx distance from a grip that still counts as on it, in strip pixels
 * @param addsToSelection whether the element under it is to be added to the selection
 * @param isStraight whether movement is limited to straight up or across
 */
public record StripPointerEvent(
    XY at, double reachPx, boolean addsToSelection, boolean isStraight) {}
