package io.github.readfall.strip.edits;

/** An element of a strip that can be selected and moved. */
public sealed interface StripItem {

  /**
   * A balloon.
   *
   * @param id of its cue
   */
  record Balloon(String id) implements StripItem {}

  /**
   * The tip of a balloon's tail.
   *
   * @param balloon id of its cue
   */
  record Tip(String balloon, int tail) implements StripItem {}

  /**
   * A panel's box.
   *
   * @param panel its place in the script, from 1
   */
  record Panel(int panel) implements StripItem {}

  /**
   * An area to keep clear.
   *
   * @param index in the layout's list, from 0
   */
  record Area(int index) implements StripItem {}

  /**
   * A speaker's mouth.
   *
   * @param panel its place in the script, from 1
   * @param speaker as in the script
   */
  record Mouth(int panel, String speaker) implements StripItem {}
}
