package io.github.readfall.strip;

import io.github.readfall.base.geom.Box;

/**
 * A part of the picture that nothing may cover.
 *
 * @param box in strip pixels
 * @param what it is, e.g. {@code face}; may be empty
 * @param extra keys that this version does not know
 */
public record KeepClear(Box box, String what, Extra extra) {}
