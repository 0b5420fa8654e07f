package io.github.readfall.window.canvas;

import io.github.readfall.draw.Layer;
import io.github.readfall.draw.render.Java2dPainter;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/**
 * Shows a strip in tiles that are painted off the event thread. The stand-in for a tile that is not
 * ready is its former picture, the same part at another scale, or the panels' boxes. All methods
 * are for the event thread; lengths are device pixels from the strip's upper left corner.
 */
final class Tiles {

  private final TileCache cache;
  private final TileWorker worker;
  private final Map<TileGrid.Id, Long> fingerprints = new HashMap<>();
  private final boolean withThumbnail;
  private TilePainter painter;
  private Optional<Double> former = Optional.empty();
  private boolean hasAny;
  private int missing;
  private int blank;

  /**
   * An empty strip.
   *
   * @param mostBytes memory that tiles may take
   * @param withThumbnail whether the whole strip is kept at a small scale, to stand in for tiles
   * @param arrived is given the place of each tile that is ready, on the event thread
   */
  Tiles(long mostBytes, boolean withThumbnail, Consumer<Rectangle> arrived) {
    this.cache = new TileCache(mostBytes);
    this.withThumbnail = withThumbnail;
    StripScene empty = StripScene.empty(1);
    this.painter = new TilePainter(empty, EnumSet.allOf(Layer.class), TileGrid.of(empty, 1));
    this.worker =
        new TileWorker(
            cache,
            done ->
                SwingUtilities.invokeLater(
                    () -> {
                      if (done.painter().grid().equals(painter.grid())) {
                        hasAny = true;
                        arrived.accept(done.painter().grid().place(done.id()));
                      }
                    }));
  }

  StripScene scene() {
    return painter.scene();
  }

  TileGrid grid() {
    return painter.grid();
  }

  /** Shows another scene; tiles that look the same in both are not painted again. */
  void show(StripScene scene, Set<Layer> layers, double scale) {
    TileGrid grid = TileGrid.of(scene, scale);
    boolean sameMarks = scene == painter.scene() && layers.equals(painter.layers());
    if (grid.scale() != painter.grid().scale()) {
      former = hasAny ? Optional.of(painter.grid().scale()) : former;
      hasAny = false;
    }
    if (!sameMarks || !grid.equals(painter.grid())) {
      fingerprints.clear();
      painter = new TilePainter(scene, layers, grid);
    }
  }

  /** The number of tiles that were not ready at the last painting, with a stand-in or not. */
  int missing() {
    return missing;
  }

  /** The number of those for which no other picture stood in. */
  int blank() {
    return blank;
  }

  /** Whether every tile that was asked for is painted. */
  boolean isSettled() {
    return worker.isIdle();
  }

  /**
   * Paints a part, and requests its missing tiles.
   *
   * @param g in device pixels, its origin at the strip's upper left corner
   * @param part to be painted now
   * @param ahead to be ready next
   */
  void paint(Graphics2D g, Rectangle part, Rectangle ahead) {
    missing = 0;
    blank = 0;
    Set<TileWorker.Job> wanted = new LinkedHashSet<>();
    for (TileGrid.Id id : painter.grid().tilesIn(part)) {
      paint(g, id).ifPresent(wanted::add);
    }
    missing = wanted.size();
    for (TileGrid.Id id : painter.grid().tilesIn(ahead)) {
      if (!isReady(id)) {
        wanted.add(job(id));
      }
    }
    Optional<TilePainter> small = withThumbnail ? Optional.of(thumbnail()) : Optional.empty();
    worker.want(List.copyOf(wanted), small, part.getCenterY() / painter.grid().scale());
  }

  private TilePainter thumbnail() {
    double scale = ThumbnailScale.scale(painter.scene());
    return new TilePainter(painter.scene(), painter.layers(), TileGrid.of(painter.scene(), scale));
  }

  private TileWorker.Job job(TileGrid.Id id) {
    return new TileWorker.Job(painter, id, fingerprint(id));
  }

  private long fingerprint(TileGrid.Id id) {
    return fingerprints.computeIfAbsent(id, painter::marksFingerprint) + painter.artFingerprint(id);
  }

  private boolean isReady(TileGrid.Id id) {
    long fingerprint = fingerprint(id);
    return cache
        .get(painter.grid().scale(), id)
        .filter(tile -> tile.fingerprint() == fingerprint)
        .isPresent();
  }

  /**
   * Paints a tile or its stand-in.
   *
   * @return the job to be done if it was a stand-in
   */
  private Optional<TileWorker.Job> paint(Graphics2D g, TileGrid.Id id) {
    Rectangle place = painter.grid().place(id);
    Optional<TileCache.Tile> tile = cache.get(painter.grid().scale(), id);
    if (tile.isEmpty()) {
      standIn(g, place);
      return Optional.of(job(id));
    }
    BufferedImage image = tile.get().image();
    if (image.getWidth() < place.width || image.getHeight() < place.height) {
      standIn(g, place);
    }
    drawWithin(g, image, place);
    return tile.get().fingerprint() == fingerprint(id) ? Optional.empty() : Optional.of(job(id));
  }

  /** Paints no more of a picture than its place: that of a longer strip may be taller. */
  private static void drawWithin(Graphics2D g, BufferedImage image, Rectangle place) {
    int width = Math.min(image.getWidth(), place.width);
    int height = Math.min(image.getHeight(), place.height);
    int right = place.x + width;
    int bottom = place.y + height;
    g.drawImage(image, place.x, place.y, right, bottom, 0, 0, width, height, null);
  }

  private void standIn(Graphics2D outer, Rectangle place) {
    Graphics2D g = (Graphics2D) outer.create();
    g.clipRect(place.x, place.y, place.width, place.height);
    double small = ThumbnailScale.scale(painter.scene());
    if (!covers(worker.thumbnail(), small, place)) {
      boxes(g, place);
      blank++;
    }
    stretch(g, place, worker.thumbnail(), small);
    former.ifPresent(scale -> stretch(g, place, cache, scale));
    g.dispose();
  }

  private boolean covers(TileCache from, double scale, Rectangle place) {
    TileGrid grid = TileGrid.of(painter.scene(), scale);
    return grid.tilesIn(at(place, scale)).stream().allMatch(id -> from.get(scale, id).isPresent());
  }

  /** Paints the same part from tiles of another scale, as many as there are. */
  private void stretch(Graphics2D g, Rectangle place, TileCache from, double scale) {
    TileGrid grid = TileGrid.of(painter.scene(), scale);
    double factor = painter.grid().scale() / scale;
    for (TileGrid.Id id : grid.tilesIn(at(place, scale))) {
      from.get(scale, id).ifPresent(tile -> draw(g, tile.image(), grid.place(id), factor));
    }
  }

  /** A part at another scale. */
  private Rectangle at(Rectangle place, double scale) {
    double factor = painter.grid().scale() / scale;
    int x = (int) Math.floor(place.x / factor);
    int y = (int) Math.floor(place.y / factor);
    int right = (int) Math.ceil((place.x + place.width) / factor);
    int bottom = (int) Math.ceil((place.y + place.height) / factor);
    return new Rectangle(x, y, right - x, bottom - y);
  }

  private static void draw(Graphics2D g, BufferedImage image, Rectangle at, double factor) {
    int left = (int) Math.floor(at.x * factor);
    int top = (int) Math.floor(at.y * factor);
    int right = (int) Math.ceil((at.x + image.getWidth()) * factor);
    int bottom = (int) Math.ceil((at.y + image.getHeight()) * factor);
    g.drawImage(image, left, top, right - left, bottom - top, null);
  }

  /** Paints paper, and the panels as plain boxes. */
  private void boxes(Graphics2D g, Rectangle place) {
    g.setColor(new Color(painter.scene().paper().rgb()));
    g.fill(place);
    double scale = painter.grid().scale();
    g.scale(scale, scale);
    Java2dPainter marks = new Java2dPainter(g);
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
    painter
        .scene()
        .underArt(
            painter.layers().contains(Layer.PANELS) ? Set.of(Layer.PANELS) : Set.of(),
            place.y / scale,
            (place.y + place.height) / scale)
        .forEach(mark -> mark.paintOn(marks));
    g.scale(1 / scale, 1 / scale);
  }
}
