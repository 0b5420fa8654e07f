package io.github.readfall.window.canvas;

import io.github.readfall.base.cache.ByteCache;
import java.awt.image.BufferedImage;
import java.util.Optional;

/** The most recently used tiles, up to a number of bytes. Safe to share between threads. */
final class TileCache {

  private final ByteCache<Key, Tile> tiles;

  /** A tile at a scale. */
  private record Key(double scale, TileGrid.Id id) {}

  /**
   * A painted tile.
   *
   * @param image its pixels
   * @param fingerprint a hash of what it shows
   */
  record Tile(BufferedImage image, long fingerprint) {
    private long bytes() {
      return 4L * image.getWidth() * image.getHeight();
    }
  }

  TileCache(long maxBytes) {
    this.tiles = new ByteCache<>(maxBytes, Tile::bytes);
  }

  Optional<Tile> get(double scale, TileGrid.Id id) {
    return tiles.get(new Key(scale, id));
  }

  void put(double scale, TileGrid.Id id, Tile tile) {
    tiles.put(new Key(scale, id), tile);
  }

  long bytes() {
    return tiles.bytes();
  }
}
