package io.github.readfall.script;

/**
 * Someone who speaks.
 *
 * @param name as the header Cast has it
 * @param voice the voice they are lettered in; empty where none is named
 */
public record CastMember(String name, String voice) {}
