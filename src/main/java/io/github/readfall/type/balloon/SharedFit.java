package io.github.readfall.type.balloon;

/**
 * An outline that several texts go into, each with breaks of its own.
 *
 * @param enclosed the outline; each text has its own place in it, so its shift says nothing
 * @param decidedBy index of the text that needs it to be as large as it is
 */
public record SharedFit(Enclosed enclosed, int decidedBy) {}
