package io.github.readfall.export.pdf;

import io.github.readfall.art.ArtPage;
import io.github.readfall.art.ArtStore;
import io.github.readfall.art.StripArt;
import io.github.readfall.art.UnreadableArt;
import io.github.readfall.base.files.Cancelled;
import io.github.readfall.base.files.CannotWrite;
import io.github.readfall.base.files.Progress;
import io.github.readfall.base.geom.Box;
import java.awt.image.BufferedImage;
import java.io.Closeable;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;

/**
 * The art of a strip at the size of a page: read once from the top, then taken in pieces for every
 * document that shows it.
 */
final class ProofArt implements Closeable {

  /** Resolution of a picture in print. Common practice: 200 to 300 dots in an inch. */
  private static final double DOTS_PER_PT = 200 / 72.0;

  /** No picture in a document has more rows. */
  private static final int MOST_ROWS = 2048;

  /** Of JPEG, from 0 to 1: flat colours stay clean. House default, no source. */
  private static final float QUALITY = 0.88f;

  private static final int DPI = 200;

  private final StripArt art;
  private final ArtStore store;

  private ProofArt(StripArt art, ArtStore store) {
    this.art = art;
    this.store = store;
  }

  /**
   * Reads the art.
   *
   * @param stripPt its width on the page, in points
   * @throws CannotWrite if a page of it cannot be read
   * @throws Cancelled if it is no longer wanted
   */
  static ProofArt read(StripArt art, double stripPt, Progress work) throws CannotWrite, Cancelled {
    try {
      int widthPx = (int) Math.max(1, Math.min(art.widthPx(), Math.ceil(stripPt * DOTS_PER_PT)));
      ArtStore store = ArtStore.of(narrowed(art, widthPx));
      List<Cancelled> halted = new ArrayList<>();
      store.fill((read, of) -> goesOn(work, read, of, halted));
      if (!halted.isEmpty()) {
        store.close();
        throw halted.get(0);
      }
      if (!store.problems().isEmpty()) {
        store.close();
        throw new CannotWrite(store.problems().get(0));
      }
      return new ProofArt(art, store);
    } catch (UnreadableArt e) {
      throw new CannotWrite(String.valueOf(e.getMessage()));
    }
  }

  private static boolean goesOn(Progress work, int read, int of, List<Cancelled> halted) {
    try {
      work.at(read, Math.max(1, of));
      return true;
    } catch (Cancelled e) {
      halted.add(e);
      return false;
    }
  }

  /** The same pages narrower, one below the other. */
  private static StripArt narrowed(StripArt art, int widthPx) {
    List<ArtPage> pages = new ArrayList<>();
    double top = 0;
    for (ArtPage page : art.pages()) {
      double height = Math.max(1, Math.rint(page.box().height() * widthPx / art.widthPx()));
      pages.add(
          new ArtPage(
              page.file(), page.widthPx(), page.heightPx(), new Box(0, top, widthPx, height)));
      top += height;
    }
    return new StripArt(widthPx, pages, List.of());
  }

  /** The art between two heights of the strip, and a little above and below. */
  List<PageArt> between(double topPx, double bottomPx, PDDocument document) throws IOException {
    List<PageArt> pieces = new ArrayList<>();
    for (int i = 0; i < art.pages().size(); i++) {
      Box whole = art.pages().get(i).box();
      Box kept = store.art().pages().get(i).box();
      double rowPx = whole.height() / kept.height();
      int first = (int) Math.max(0, Math.floor((topPx - whole.y()) / rowPx));
      int end = (int) Math.min(kept.height(), Math.ceil((bottomPx - whole.y()) / rowPx));
      for (int from = first; from < end; from += MOST_ROWS) {
        int to = Math.min(end, from + MOST_ROWS);
        BufferedImage rows = rows((int) kept.y() + from, (int) kept.y() + to);
        Box box = new Box(0, whole.y() + from * rowPx, whole.width(), (to - from) * rowPx);
        pieces.add(new PageArt(JPEGFactory.createFromImage(document, rows, QUALITY, DPI), box));
      }
    }
    return pieces;
  }

  private BufferedImage rows(int from, int to) {
    int width = store.widthPx(0);
    BufferedImage image = new BufferedImage(width, to - from, BufferedImage.TYPE_INT_RGB);
    for (int band = from / ArtStore.BAND_ROWS; band * ArtStore.BAND_ROWS < to; band++) {
      int top = band * ArtStore.BAND_ROWS - from;
      store.band(0, band).ifPresent(rows -> image.createGraphics().drawImage(rows, 0, top, null));
    }
    return image;
  }

  @Override
  public void close() {
    store.close();
  }
}
