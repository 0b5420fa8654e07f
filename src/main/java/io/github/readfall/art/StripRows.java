package io.github.readfall.art;

import java.io.IOException;

/** Something that can be read from the top, row by row, as often as need be. */
public interface StripRows {

  /** Positive. */
  int widthPx();

  /** Positive. */
  int heightPx();

  /**
   * Hands on all rows, each once.
   *
   * @throws UnreadableArt where a page cannot be read to its end
   */
  void pour(RowTaker to) throws UnreadableArt;

  /** The art of a strip, at the strip's width; a page ends where the next begins. */
  static StripRows of(StripArt art) {
    return new StripRows() {
      @Override
      public int widthPx() {
        return art.widthPx();
      }

      @Override
      public int heightPx() {
        return art.heightPx();
      }

      @Override
      public void pour(RowTaker to) throws UnreadableArt {
        int[] y = {0};
        for (ArtPage page : art.pages()) {
          try {
            page.pour(rgb -> to.row(y[0]++, rgb));
          } catch (IOException e) {
            throw UnreadableReason.closed(page.file());
          }
        }
      }
    };
  }
}
