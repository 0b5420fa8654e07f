package io.github.readfall.script.assist;

/**
 * A place of the script where something may be written.
 *
 * @param kind of what may be written
 * @param typed its beginning; empty if there is none
 */
public record Slot(SlotKind kind, String typed) {

  /** A place for prose. */
  public static final Slot NONE = new Slot(SlotKind.NONE, "");
}
