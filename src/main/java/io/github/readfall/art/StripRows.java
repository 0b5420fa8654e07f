package io.github.readfall.art;

import io.github.readfall.base.OneCall;
import java.io.IOException;

/** A strip that can be read from the top, row by row, any number of times. */
public interface StripRows {

  /** The width of the strip; positive. */
  int widthPx();

  /** The height of the strip; positive. */
  int heightPx();

  /**
   * Passes on all rows, each once.
   *
   * @throws UnreadableArt if a page cannot be read to its end
   */
  void pour(RowTaker to) throws UnreadableArt;

  /** Numbers the rows of all pages from the top of the strip. */
  @OneCall
  final class Numbered implements RowSink {

    private final RowTaker to;
    private int y;

    private Numbered(RowTaker to) {
      this.to = to;
    }

    @Override
    public void row(byte[] rgb) throws IOException {
      to.row(y++, rgb);
    }
  }

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
        Numbered numbered = new Numbered(to);
        for (ArtPage page : art.pages()) {
          try {
            page.pour(numbered);
          } catch (IOException e) {
            throw UnreadableReason.closed(page.file());
          }
        }
      }
    };
  }
}
