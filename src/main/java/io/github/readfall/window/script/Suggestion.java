package io.github.readfall.window.script;

/**
 * A completion that is offered at the caret.
 *
 * @param label in the list
 * @param text that replaces the typed beginning
 */
record Suggestion(String label, String text) {

  @Override
  public String toString() {
    return label;
  }
}
