package io.github.readfall.window.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Rectangle;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TileGridTest {

  @ParameterizedTest
  @ValueSource(doubles = {0.0371, 0.5, 1, 1.7, 3})
  void everyPixelIsInExactlyOneTile(double scale) {
    TileGrid grid = TileGrid.of(Strips.striped(3333, 0), scale);
    List<TileGrid.Id> all =
        grid.tilesIn(new Rectangle(-50, -50, grid.widthPx() + 99, grid.heightPx() + 99));
    long area =
        all.stream().map(grid::place).mapToLong(tile -> (long) tile.width * tile.height).sum();
    assertEquals((long) grid.widthPx() * grid.heightPx(), area);
    for (TileGrid.Id one : all) {
      assertTrue(
          all.stream()
              .filter(other -> !other.equals(one))
              .noneMatch(other -> grid.place(other).intersects(grid.place(one))));
    }
  }

  @Test
  void onlyTilesOfThePartAreNamed() {
    TileGrid grid = TileGrid.of(Strips.striped(10_000, 0), 1);
    assertEquals(
        List.of(new TileGrid.Id(0, 1), new TileGrid.Id(0, 2)),
        grid.tilesIn(new Rectangle(0, TileGrid.TILE_HEIGHT, 800, TileGrid.TILE_HEIGHT + 1)));
    assertEquals(List.of(), grid.tilesIn(new Rectangle(0, 10_000, 800, 100)));
    assertEquals(List.of(), grid.tilesIn(new Rectangle(900, 0, 100, 100)));
  }

  @Test
  void aTileKnowsItsHeightsOnTheStrip() {
    TileGrid grid = TileGrid.of(Strips.striped(10_000, 0), 0.5);
    assertEquals(
        new VisiblePart(2 * TileGrid.TILE_HEIGHT, 4 * TileGrid.TILE_HEIGHT),
        grid.heights(new TileGrid.Id(0, 1)));
  }

  @Test
  void anEmptyStripHasNoTiles() {
    TileGrid grid = TileGrid.of(StripScene.empty(1600), 1);
    assertTrue(grid.tilesIn(new Rectangle(0, 0, 500, 500)).isEmpty());
    assertFalse(grid.widthPx() < 1);
  }
}
