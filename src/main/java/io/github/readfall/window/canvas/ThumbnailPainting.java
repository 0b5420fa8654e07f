package io.github.readfall.window.canvas;

import java.util.HashMap;
import java.util.Map;

/** Paints a whole strip at a small scale, from near to far, and again as its art is read. */
final class ThumbnailPainting {

  private final TilePainter painter;
  private final TileCache into;
  private final int rows;
  private final Map<Integer, Long> fingerprints = new HashMap<>();
  private int from;
  private int step;
  private int artRows = -1;

  /** A painting with everything still to be done. */
  ThumbnailPainting(TilePainter painter, TileCache into) {
    this.painter = painter;
    this.into = into;
    this.rows = (painter.grid().heightPx() + TileGrid.TILE_HEIGHT - 1) / TileGrid.TILE_HEIGHT;
  }

  boolean isOf(TilePainter other) {
    return painter.equals(other);
  }

  /** Starts again at another height, unless everything is done and no art has been read since. */
  synchronized void startAt(double nearPx) {
    if (!isDone() || artRows != readyArt()) {
      int near = (int) (nearPx * painter.grid().scale() / TileGrid.TILE_HEIGHT);
      from = Math.max(0, Math.min(rows - 1, near));
      step = 0;
      artRows = readyArt();
    }
  }

  private int readyArt() {
    return painter.scene().art().map(store -> store.readyRows(0)).orElse(0);
  }

  synchronized boolean isDone() {
    return step >= 2 * rows;
  }

  /** Paints the next row: below and above the start in turn. */
  void paintNext(JoinedBands bands) {
    int row = nextRow();
    if (row >= 0 && row < rows) {
      TileGrid.Id id = new TileGrid.Id(0, row);
      long fingerprint = fingerprint(row, id);
      double scale = painter.grid().scale();
      if (into.get(scale, id).filter(tile -> tile.fingerprint() == fingerprint).isEmpty()) {
        into.put(scale, id, new TileCache.Tile(painter.paint(id, bands), fingerprint));
      }
    }
  }

  private synchronized int nextRow() {
    int row = step % 2 == 0 ? from + step / 2 : from - (step + 1) / 2;
    step++;
    return row;
  }

  private long fingerprint(int row, TileGrid.Id id) {
    return fingerprints.computeIfAbsent(row, r -> painter.marksFingerprint(id))
        + painter.artFingerprint(id);
  }
}
