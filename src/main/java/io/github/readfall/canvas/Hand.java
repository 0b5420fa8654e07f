package io.github.readfall.canvas;

/** What a pointer does on a strip. Told on the event thread. */
public interface Hand {

  /** The button goes down. */
  void press(Touch touch);

  /** The other button goes down: what is under it is meant by the menu that opens. */
  void point(Touch touch);

  /** It moves with the button down. */
  void pull(Touch touch);

  /** The button goes up; tells whether anything was pulled, so that it was no click. */
  boolean release(Touch touch);

  /** The pointer that shows what could be done, as {@link java.awt.Cursor} counts them. */
  int pointer(Touch touch);
}
