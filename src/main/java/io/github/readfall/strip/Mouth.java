package io.github.readfall.strip;

import io.github.readfall.base.geom.XY;

/**
 * A speaker's mouth in a panel.
 *
 * @param panel its place in the script, from 1
 * @param speaker as in the script
 * @param at in strip pixels
 * @param extra keys that this version does not know
 */
public record Mouth(int panel, String speaker, XY at, Extra extra) {}
