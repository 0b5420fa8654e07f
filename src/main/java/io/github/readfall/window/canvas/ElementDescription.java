package io.github.readfall.window.canvas;

import io.github.readfall.base.geom.Box;

/**
 * Something on the strip, for those who do not see it.
 *
 * @param name who says what
 * @param description where it is, and what else there is to know
 * @param box in strip pixels
 * @param chosen whether it is worked on
 */
public record ElementDescription(String name, String description, Box box, boolean chosen) {}
