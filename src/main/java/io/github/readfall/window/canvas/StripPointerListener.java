package io.github.readfall.window.canvas;

/** What a pointer does on a strip. Told on the event thread. */
public interface StripPointerListener {

  /** The button goes down. */
  void press(StripPointerEvent event);

  /** The other button goes down: what is under it is meant by the menu that opens. */
  public void pressForMenu(StripPointerEvent event);

  /** It moves with the button down. */
  void drag(StripPointerEvent event);

  /** The button goes up; tells whether anything was pulled, so that it was no click. */
  boolean release(StripPointerEvent event);

  /** The pointer that shows what could be done, as {@link java.awt.Cursor} counts them. */
  int cursor(StripPointerEvent event);
}
