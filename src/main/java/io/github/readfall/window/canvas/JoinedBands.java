package io.github.readfall.window.canvas;

import io.github.readfall.art.ArtStore;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Optional;

/** Bands of art joined in one image, so that they are scaled as one. For one thread. */
final class JoinedBands {

  private Optional<BufferedImage> sheet = Optional.empty();

  /**
   * Rows of the art, in an image that is valid until the next call.
   *
   * @param first the first row, of a level
   * @param end one past the last row; more than {@code first}, and read already
   */
  BufferedImage rows(ArtStore store, int level, int first, int end) {
    BufferedImage rows =
        sheet(store.widthPx(level), end - first)
            .getSubimage(0, 0, store.widthPx(level), end - first);
    Graphics2D g = rows.createGraphics();
    g.setColor(Color.WHITE);
    for (int band = first / ArtStore.BAND_ROWS; band * ArtStore.BAND_ROWS < end; band++) {
      int y = band * ArtStore.BAND_ROWS - first;
      store
          .band(level, band)
          .ifPresentOrElse(
              image -> g.drawImage(image, 0, y, null),
              () ->
                  g.fillRect(
                      0, y, rows.getWidth(), ArtStore.BAND_ROWS)); // the store was closed meanwhile
    }
    g.dispose();
    return rows;
  }

  private BufferedImage sheet(int width, int height) {
    if (sheet.filter(old -> old.getWidth() >= width && old.getHeight() >= height).isEmpty()) {
      sheet = Optional.of(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB));
    }
    return sheet.orElseThrow();
  }
}
