package io.github.readfall.edits;

/** Something on a strip that can be taken hold of. */
public sealed interface Item {

  /**
   * A balloon.
   *
   * @param id of its cue
   */
  record Balloon(String id) implements Item {}

  /**
   * The tip of a balloon's tail.
   *
   * @param balloon id of its cue
   */
  record Tip(String balloon) implements Item {}

  /**
   * A panel's box.
   *
   * @param panel its place in the script, from 1
   */
  record Panel(int panel) implements Item {}

  /**
   * An area to keep clear.
   *
   * @param index in the layout's list, from 0
   */
  record Area(int index) implements Item {}

  /**
   * Where somebody's mouth is.
   *
   * @param panel its place in the script, from 1
   * @param speaker as in the script
   */
  record Mouth(int panel, String speaker) implements Item {}
}
