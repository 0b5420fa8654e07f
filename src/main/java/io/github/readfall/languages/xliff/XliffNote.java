package io.github.readfall.languages.xliff;

/**
 * A note.
 *
 * @param id empty where it has none
 * @param category what it is about; empty where it does not say
 * @param text what it says
 */
public record XliffNote(String id, String category, String text) {}
