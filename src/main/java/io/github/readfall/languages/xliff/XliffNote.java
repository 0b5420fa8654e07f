package io.github.readfall.languages.xliff;

/**
 * A note.
 *
 * @param id empty if it has none
 * @param category empty if it has none
 * @param text of the note
 */
public record XliffNote(String id, String category, String text) {}
