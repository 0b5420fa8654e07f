package io.github.readfall.art;

/** Is told how far reading has come, and says whether it shall go on. */
public interface ArtProgress {

  /**
   * Called now and then from the thread that reads.
   *
   * @param readPx rows of the strip so far
   * @param ofPx rows of the strip in all
   * @return whether to go on
   */
  boolean goesOn(int readPx, int ofPx);
}
