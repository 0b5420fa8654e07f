package io.github.readfall.window.parts;

import java.util.List;

/**
 * Something the person should know, with what can be done about it.
 *
 * @param topic of the notice; a newer notice with the same topic replaces it
 * @param sentence in plain words
 * @param actions what can be done, the most likely first; closing the notice is always possible
 */
public record Notice(String topic, String sentence, List<Action> actions) {

  /**
   * A button of a notice.
   *
   * @param label of the button
   * @param action run after the notice has been closed
   */
  public record Action(String label, Runnable action) {}

  public Notice {
    actions = List.copyOf(actions);
  }

  /** A notice without buttons of its own. */
  public static Notice of(String topic, String sentence) {
    return new Notice(topic, sentence, List.of());
  }
}
