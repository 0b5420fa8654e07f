package io.github.readfall.window.canvas;

import io.github.readfall.art.ArtStore;
import io.github.readfall.draw.Layer;
import io.github.readfall.draw.render.Java2dPainter;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.Set;

/**
 * Paints tiles of one scene of a strip, on any thread.
 *
 * @param scene what is painted
 * @param layers that are visible
 * @param grid the scale and the tiles
 */
record TilePainter(StripScene scene, Set<Layer> layers, TileGrid grid) {

  /** Rows of art beyond a tile, so that its edge is scaled like its middle. */
  private static final int ART_MARGIN = 2;

  private static final double SAME = 1e-9;

  TilePainter {
    layers = Set.copyOf(layers);
  }

  /** A hash of a tile's marks and size; equal if it would look the same, apart from art. */
  long marksFingerprint(TileGrid.Id id) {
    VisiblePart heights = grid.heights(id);
    Rectangle place = grid.place(id);
    long size = 31L * place.width + place.height;
    return scene.fingerprint(layers, heights.topPx(), heights.bottomPx()) + size;
  }

  /** A hash of the art that a tile shows, and of how much of it has been read. */
  long artFingerprint(TileGrid.Id id) {
    return scene
        .art()
        .map(store -> 31L * System.identityHashCode(store) + readyRows(store, id))
        .orElse(0L);
  }

  private int readyRows(ArtStore store, TileGrid.Id id) {
    int level = level(store);
    VisiblePart heights = grid.heights(id);
    int last = (int) Math.ceil(heights.bottomPx() / (1 << level)) + ART_MARGIN;
    int first = (int) Math.max(0, Math.floor(heights.topPx() / (1 << level)) - ART_MARGIN);
    return Math.max(first, Math.min(last, store.readyRows(level)));
  }

  /** The smallest size of the art that need not be enlarged. */
  private int level(ArtStore store) {
    int level = 0;
    while (level + 1 < store.levels() && 1.0 / (1 << (level + 1)) >= grid.scale() - SAME) {
      level++;
    }
    return level;
  }

  /**
   * Paints a tile.
   *
   * @param bands lent by the painting thread
   */
  BufferedImage paint(TileGrid.Id id, JoinedBands bands) {
    Rectangle place = grid.place(id);
    BufferedImage image = new BufferedImage(place.width, place.height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(new Color(scene.paper().rgb()));
    g.fillRect(0, 0, place.width, place.height);
    VisiblePart heights = grid.heights(id);
    AffineTransform onStrip = AffineTransform.getTranslateInstance(-place.x, -place.y);
    onStrip.scale(grid.scale(), grid.scale());
    g.setTransform(onStrip);
    Java2dPainter painter = new Java2dPainter(g);
    scene
        .underArt(layers, heights.topPx(), heights.bottomPx())
        .forEach(mark -> mark.paintOn(painter));
    scene.art().ifPresent(store -> art(store, id, g, bands));
    g.setTransform(onStrip);
    scene
        .overArt(layers, heights.topPx(), heights.bottomPx())
        .forEach(mark -> mark.paintOn(painter));
    g.dispose();
    return image;
  }

  private void art(ArtStore store, TileGrid.Id id, Graphics2D g, JoinedBands bands) {
    int level = level(store);
    VisiblePart heights = grid.heights(id);
    int step = 1 << level;
    int first = (int) Math.max(0, Math.floor(heights.topPx() / step) - ART_MARGIN);
    int last = (int) Math.ceil(heights.bottomPx() / step) + ART_MARGIN;
    int end = Math.min(last, store.readyRows(level));
    if (end <= first) {
      return;
    }
    g.translate(0, (double) first * step);
    g.scale(step, step);
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION,
        Math.abs(grid.scale() * step - 1) < SAME
            ? RenderingHints.VALUE_INTERPOLATION_NEAREST_NEIGHBOR
            : RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    g.drawImage(bands.rows(store, level, first, end), 0, 0, null);
  }
}
