package io.github.readfall.type.balloon;

/**
 * An outline that several texts fit, each with breaks of its own.
 *
 * @param enclosed the outline; each text has its own place in it, so its shift means nothing
 * @param decidedBy index of the text that needs this size
 */
public record SharedFit(Enclosed enclosed, int decidedBy) {}
