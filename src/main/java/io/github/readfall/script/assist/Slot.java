package io.github.readfall.script.assist;

/**
 * A place of the script where something may be written.
 *
 * @param kind what
 * @param typed how it begins already; empty if not at all
 */
public record Slot(SlotKind kind, String typed) {

  /** Where prose is written. */
  public static final Slot NONE = new Slot(SlotKind.NONE, "");
}
