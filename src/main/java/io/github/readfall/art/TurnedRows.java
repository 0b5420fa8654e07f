package io.github.readfall.art;

import io.github.readfall.base.OneCall;
import java.nio.file.Path;

/** Turns a picture upright that is stored otherwise; the picture is wholly in memory. */
@OneCall
final class TurnedRows implements ArtRows {

  /** Most pixels of such a picture. */
  private static final long MOST_PX = 24_000_000;

  private final ArtRows stored;
  private final Orientation orientation;
  private byte[] whole = {};
  private int next;

  private TurnedRows(ArtRows stored, Orientation orientation) {
    this.stored = stored;
    this.orientation = orientation;
  }

  static TurnedRows of(Path file, ArtRows stored, Orientation orientation) throws UnreadableArt {
    if ((long) stored.widthPx() * stored.heightPx() > MOST_PX) {
      stored.close();
      throw UnreadableReason.turned(file);
    }
    return new TurnedRows(stored, orientation);
  }

  @Override
  public int widthPx() {
    return orientation.swapsSides() ? stored.heightPx() : stored.widthPx();
  }

  @Override
  public int heightPx() {
    return orientation.swapsSides() ? stored.widthPx() : stored.heightPx();
  }

  @Override
  public void read(byte[] rgb) throws UnreadableArt {
    int y = next++;
    if (y >= heightPx()) {
      throw new IllegalStateException("no more rows");
    }
    if (y == 0) {
      whole = readWhole();
    }
    for (int x = 0; x < widthPx(); x++) {
      System.arraycopy(whole, 3 * storedAt(x, y), rgb, 3 * x, 3);
    }
  }

  private byte[] readWhole() throws UnreadableArt {
    int rowBytes = 3 * stored.widthPx();
    byte[] all = new byte[rowBytes * stored.heightPx()];
    byte[] row = new byte[rowBytes];
    for (int y = 0; y < stored.heightPx(); y++) {
      stored.read(row);
      System.arraycopy(row, 0, all, y * rowBytes, rowBytes);
    }
    return all;
  }

  /** The stored index of the pixel that is seen at a place. */
  private int storedAt(int x, int y) {
    int right = stored.widthPx() - 1;
    int bottom = stored.heightPx() - 1;
    int column =
        switch (orientation) {
          case UPRIGHT, MIRRORED_UPSIDE_DOWN -> x;
          case MIRRORED, UPSIDE_DOWN -> right - x;
          case TRANSPOSED, TURN_RIGHT -> y;
          case TRANSPOSED_UPSIDE_DOWN, TURN_LEFT -> right - y;
        };
    int row =
        switch (orientation) {
          case UPRIGHT, MIRRORED -> y;
          case UPSIDE_DOWN, MIRRORED_UPSIDE_DOWN -> bottom - y;
          case TRANSPOSED, TURN_LEFT -> x;
          case TURN_RIGHT, TRANSPOSED_UPSIDE_DOWN -> bottom - x;
        };
    return row * stored.widthPx() + column;
  }

  @Override
  public void close() {
    stored.close();
  }
}
