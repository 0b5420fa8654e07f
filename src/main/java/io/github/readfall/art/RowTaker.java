package io.github.readfall.art;

/** Takes the rows of a strip's art, from the top, each once. */
public interface RowTaker {

  /**
   * Takes a row.
   *
   * @param y its number, from 0
   * @param rgb red, green, blue from the left, as wide as the strip; overwritten after the call, so
   *     copy what is kept
   */
  void row(int y, byte[] rgb);
}
