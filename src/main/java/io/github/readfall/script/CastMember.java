package io.github.readfall.script;

/**
 * A declared speaker.
 *
 * @param name as in the header Cast
 * @param voice of the lettering; empty if none is named
 */
public record CastMember(String name, String voice) {}
