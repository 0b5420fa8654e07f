package io.github.readfall.canvas;

import io.github.readfall.geom.Box;

/**
 * Something on the strip, for those who do not see it.
 *
 * @param name who says what
 * @param description where it is, and what else there is to know
 * @param box in strip pixels
 * @param chosen whether it is worked on
 */
public record Thing(String name, String description, Box box, boolean chosen) {}
