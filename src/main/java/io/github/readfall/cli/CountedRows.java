package io.github.readfall.cli;

import io.github.readfall.art.RowTaker;
import io.github.readfall.art.StripRows;
import io.github.readfall.art.UnreadableArt;
import java.io.PrintWriter;

/** Rows of art, with one line on a terminal that says how far reading has come. */
record CountedRows(StripRows rows, PrintWriter err) implements StripRows {

  private static final int BETWEEN_NEWS = 4096;

  @Override
  public int widthPx() {
    return rows.widthPx();
  }

  @Override
  public int heightPx() {
    return rows.heightPx();
  }

  @Override
  public void pour(RowTaker to) throws UnreadableArt {
    if (!ProgressLine.isShown()) {
      rows.pour(to);
      return;
    }
    rows.pour(
        (y, rgb) -> {
          to.row(y, rgb);
          if ((y + 1) % BETWEEN_NEWS == 0) {
            err.print("\rread " + (y + 1) + " of " + rows.heightPx() + " rows");
            err.flush();
          }
        });
    err.print("\r" + " ".repeat(40) + "\r");
    err.flush();
  }
}
