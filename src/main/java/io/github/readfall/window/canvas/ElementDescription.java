package io.github.readfall.window.canvas;

import io.github.readfall.base.geom.Box;

/**
 * A description of an element of the strip, for people who do not see it.
 *
 * @param name the element's name; for a balloon its speaker and words
 * @param description its place and other details
 * @param box in strip pixels
 * @param chosen whether it is selected
 */
public record ElementDescription(String name, String description, Box box, boolean chosen) {}
