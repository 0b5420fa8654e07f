package io.github.readfall.window.script;

/**
 * Something that may be written at the caret.
 *
 * @param label what it is called in the list
 * @param text what is written, in the place of what is typed of it already
 */
record Suggestion(String label, String text) {

  @Override
  public String toString() {
    return label;
  }
}
