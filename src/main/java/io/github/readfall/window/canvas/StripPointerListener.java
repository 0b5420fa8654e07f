package io.github.readfall.window.canvas;

/** Reacts to a pointer on a strip. Called on the event thread. */
public interface StripPointerListener {

  /** Handles a press of the main button. */
  void press(StripPointerEvent event);

  /**
   * Handles a press of the menu button: the menu that opens is for the element under the pointer.
   */
  public void pressForMenu(StripPointerEvent event);

  /** Handles a movement with the main button down. */
  void drag(StripPointerEvent event);

  /**
   * Handles the release of the main button.
   *
   * @return whether something was dragged, so that it was no click
   */
  boolean release(StripPointerEvent event);

  /** The cursor that shows what a press would do, as a constant of {@link java.awt.Cursor}. */
  int cursor(StripPointerEvent event);
}
