package io.github.readfall.export.phone;

import io.github.readfall.art.ArtStore;
import io.github.readfall.art.StripArt;
import io.github.readfall.art.UnreadableArt;
import io.github.readfall.base.files.Cancelled;
import io.github.readfall.base.files.CannotWrite;
import io.github.readfall.base.files.Progress;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/**
 * The art of a strip, a picture for each piece of it, at about twice the pixels that the page has
 * on a phone, as JPEG: enough to judge lettering over, and not too much to send.
 */
final class ArtSlices implements Closeable {

  /** Quality of the pictures, of 1. House default, no source. */
  private static final float QUALITY = 0.8f;

  private final ArtStore store;
  private final int level;

  private ArtSlices(ArtStore store, int level) {
    this.store = store;
    this.level = level;
  }

  /**
   * Reads the art once.
   *
   * @param leastWidthPx least width of the pictures, if the strip is not narrower
   * @throws CannotWrite if a page cannot be read
   * @throws Cancelled if it is no longer wanted
   */
  static ArtSlices of(StripArt art, double leastWidthPx, Progress work)
      throws CannotWrite, Cancelled {
    try {
      ArtStore store = ArtStore.of(art);
      List<Cancelled> ended = new ArrayList<>();
      store.fill((read, of) -> goesOn(work, read, of, ended));
      if (!ended.isEmpty() || !store.problems().isEmpty()) {
        store.close();
      }
      if (!ended.isEmpty()) {
        throw ended.get(0);
      }
      if (!store.problems().isEmpty()) {
        throw new CannotWrite(store.problems().get(0));
      }
      return new ArtSlices(store, level(store, leastWidthPx));
    } catch (UnreadableArt e) {
      throw new CannotWrite(e.getMessage());
    }
  }

  private static boolean goesOn(Progress work, int read, int of, List<Cancelled> ended) {
    try {
      work.at(read, of);
      return true;
    } catch (Cancelled e) {
      ended.add(e);
      return false;
    }
  }

  /** The smallest size that is large enough, of those that a piece's start falls in with. */
  private static int level(ArtStore store, double leastWidthPx) {
    int level = 0;
    while (level + 1 < store.levels()
        && store.widthPx(level + 1) >= leastWidthPx
        && 2 << level <= StripPiece.STEP_PX) {
      level++;
    }
    return level;
  }

  /** A rule that shows a piece's art under it; empty below the art. */
  Optional<String> rule(String selector, StripPiece piece) throws IOException {
    int top = piece.topPx() >> level;
    int rows = Math.min(store.heightPx(level) - top, (piece.drawnPx() + (1 << level) - 1) >> level);
    if (rows <= 0) {
      return Optional.empty();
    }
    String data = Base64.getEncoder().encodeToString(jpeg(top, rows));
    String share = Percent.of((double) rows * (1 << level) / piece.drawnPx());
    return Optional.of(
        selector
            + "{background:url(data:image/jpeg;base64,"
            + data
            + ") 0 0/100% "
            + share
            + " no-repeat}\n");
  }

  private byte[] jpeg(int top, int rows) throws IOException {
    BufferedImage slice = new BufferedImage(store.widthPx(level), rows, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = slice.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, slice.getWidth(), rows);
    int last = (top + rows - 1) / ArtStore.BAND_ROWS;
    for (int band = top / ArtStore.BAND_ROWS; band <= last; band++) {
      int y = band * ArtStore.BAND_ROWS - top;
      store.band(level, band).ifPresent(image -> g.drawImage(image, 0, y, null));
    }
    g.dispose();
    return encoded(slice);
  }

  private static byte[] encoded(BufferedImage slice) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream stream = ImageIO.createImageOutputStream(bytes)) {
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality(QUALITY);
      writer.setOutput(stream);
      writer.write(null, new IIOImage(slice, null, null), param);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  @Override
  public void close() {
    store.close();
  }
}
