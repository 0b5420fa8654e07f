package io.github.readfall.window.canvas;

import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;

/**
 * The division of a strip into tiles at a scale.
 *
 * @param scale device pixels to one strip pixel; positive
 * @param widthPx of the strip, in device pixels
 * @param heightPx of the strip, in device pixels
 */
record TileGrid(double scale, int widthPx, int heightPx) {

  /** A tile takes a little less than 1 MiB: one more byte, and a heap region is left half empty. */
  static final int TILE_WIDTH = 1024;

  static final int TILE_HEIGHT = 240;

  /** In device pixels; taller than any strip is shown. */
  private static final double TALLEST = 1e9;

  /** The column and row of a tile, from the upper left. */
  record Id(int column, int row) {}

  static TileGrid of(StripScene scene, double scale) {
    int width = (int) Math.max(1, Math.rint(scene.widthPx() * scale));
    int height = (int) Math.min(TALLEST, Math.ceil(scene.heightPx() * scale));
    return new TileGrid(scale, width, height);
  }

  /** A tile's place on the strip, in device pixels. */
  Rectangle place(Id id) {
    int x = id.column() * TILE_WIDTH;
    int y = id.row() * TILE_HEIGHT;
    return new Rectangle(
        x, y, Math.min(TILE_WIDTH, widthPx - x), Math.min(TILE_HEIGHT, heightPx - y));
  }

  /** The tiles with any pixel in a part of the strip, row by row. */
  List<Id> tilesIn(Rectangle part) {
    Rectangle inside = part.intersection(new Rectangle(widthPx, heightPx));
    List<Id> ids = new ArrayList<>();
    if (inside.isEmpty()) {
      return ids;
    }
    int lastRow = (inside.y + inside.height - 1) / TILE_HEIGHT;
    int lastColumn = (inside.x + inside.width - 1) / TILE_WIDTH;
    for (int row = inside.y / TILE_HEIGHT; row <= lastRow; row++) {
      for (int column = inside.x / TILE_WIDTH; column <= lastColumn; column++) {
        ids.add(new Id(column, row));
      }
    }
    return ids;
  }

  /** The heights of a tile on the strip, in strip pixels. */
  VisiblePart heights(Id id) {
    Rectangle place = place(id);
    return new VisiblePart(place.y / scale, (place.y + place.height) / scale);
  }
}
