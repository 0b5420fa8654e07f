package io.github.readfall.art;

/** Is handed the rows of a strip's art, from the top, each once. */
public interface RowTaker {

  /**
   * Takes a row.
   *
   * @param y which, from 0
   * @param rgb red, green, blue from the left, as wide as the strip; only lent, so whoever keeps
   *     any of it copies it
   */
  void row(int y, byte[] rgb);
}
