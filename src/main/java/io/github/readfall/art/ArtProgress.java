package io.github.readfall.art;

/** Receives the progress of reading, and may cancel it. */
public interface ArtProgress {

  /**
   * Called now and then from the reading thread.
   *
   * @param readPx rows of the strip read so far
   * @param ofPx rows of the strip in all
   * @return false to cancel
   */
  boolean goesOn(int readPx, int ofPx);
}
