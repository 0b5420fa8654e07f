package io.github.readfall.window.canvas;

import java.awt.image.BufferedImage;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The tiles that were looked at last, as many as a fixed amount of memory holds. */
final class TileCache {

  private static final int FEW = 16;
  private static final float LOAD = 0.75f;

  private final Map<Key, Tile> tiles = new LinkedHashMap<>(FEW, LOAD, true);
  private final long mostBytes;
  private long bytes;

  /** Which tile at which scale. */
  record Key(double scale, TileGrid.Id id) {}

  /**
   * A painted tile.
   *
   * @param image its pixels
   * @param print tells what it shows
   */
  record Tile(BufferedImage image, long print) {
    long bytes() {
      return 4L * image.getWidth() * image.getHeight();
    }
  }

  TileCache(long mostBytes) {
    this.mostBytes = mostBytes;
  }

  synchronized Optional<Tile> get(double scale, TileGrid.Id id) {
    return Optional.ofNullable(tiles.get(new Key(scale, id)));
  }

  synchronized void put(double scale, TileGrid.Id id, Tile tile) {
    Tile former = tiles.put(new Key(scale, id), tile);
    bytes += tile.bytes() - (former == null ? 0 : former.bytes());
    Iterator<Tile> oldest = tiles.values().iterator();
    while (bytes > mostBytes && tiles.size() > 1) {
      bytes -= oldest.next().bytes();
      oldest.remove();
    }
  }

  synchronized long bytes() {
    return bytes;
  }

  synchronized void clear() {
    tiles.clear();
    bytes = 0;
  }
}
