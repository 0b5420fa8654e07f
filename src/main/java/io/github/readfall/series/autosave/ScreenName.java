package io.github.readfall.series.autosave;

/**
 * Identifies the screen of a window, as far as a program can tell: its place on the desktop, its
 * size there, and its density.
 *
 * @param bounds its place, in the units of the desktop
 * @param scale dots to one of those units; positive
 */
public record ScreenName(WindowBox bounds, double scale) {

  /** The screen in a word, for example {@code 1920x1080+0+0@2.0}. */
  public String word() {
    return bounds.width()
        + "x"
        + bounds.height()
        + signed(bounds.x())
        + signed(bounds.y())
        + "@"
        + scale;
  }

  private static String signed(int at) {
    return at < 0 ? Integer.toString(at) : "+" + at;
  }
}
