package io.github.readfall.export.raster;

import io.github.readfall.art.ArtPage;
import io.github.readfall.art.RowSink;
import io.github.readfall.art.StripArt;
import io.github.readfall.art.UnreadableArt;
import io.github.readfall.base.files.Cancelled;
import io.github.readfall.base.files.CannotWrite;
import io.github.readfall.base.files.Progress;
import io.github.readfall.draw.GalleyArtist;
import io.github.readfall.draw.Mark;
import io.github.readfall.draw.StripFrames;
import io.github.readfall.draw.render.BandPainter;
import io.github.readfall.draw.render.Reaches;
import io.github.readfall.strip.galley.Galley;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A strip as it is seen: its lettering over its art or, if nothing is drawn yet, over white with
 * the frames of its panels.
 *
 * @param stem the beginning of its files' names, such as {@code ep01-de}
 * @param galley the strip
 * @param art as wide as the strip
 */
public record StripPicture(String stem, Galley galley, StripArt art) {

  private static final int BAND_ROWS = 256;
  private static final byte WHITE = (byte) 255;

  /** The width in whole pixels. */
  int widthPx() {
    return art.widthPx();
  }

  /** Down to the end of the strip or of its art, whichever is lower; whole pixels, positive. */
  int heightPx() {
    int strip = (int) Math.ceil(galley.heightPx());
    return Math.max(1, Math.max(strip, art.heightPx()));
  }

  int dpi() {
    return galley.style().strip().dpi();
  }

  boolean hasArt() {
    return !art.pages().isEmpty();
  }

  String title() {
    return galley.set().script().title();
  }

  String language() {
    return galley.set().script().language();
  }

  /** The marks over the art or, if there is none, over white. */
  List<Mark> marks() {
    List<Mark> marks = new ArrayList<>();
    if (!hasArt()) {
      marks.addAll(StripFrames.of(galley));
    }
    marks.addAll(GalleyArtist.lettering(galley));
    return marks;
  }

  /**
   * Makes the picture, once, from the top, in the memory of some rows.
   *
   * @param to takes its rows, on another thread
   * @param work receives the number of rows done
   */
  void pour(RowSink to, Progress work) throws IOException, CannotWrite, Cancelled {
    try (BackgroundSink ahead = new BackgroundSink(to, widthPx())) {
      Reaches marks = Reaches.of(marks(), heightPx());
      BandPainter painter = new BandPainter(marks, widthPx(), BAND_ROWS);
      RowBands bands =
          new RowBands(
              widthPx(),
              BAND_ROWS,
              (rgb, top, rows) -> {
                painter.paint(rgb, top, rows);
                tell(work, top);
                ahead.rows(rgb, rows);
              });
      for (ArtPage page : art.pages()) {
        page.pour(bands);
      }
      byte[] white = new byte[3 * widthPx()];
      Arrays.fill(white, WHITE);
      while (bands.height() < heightPx()) {
        bands.row(white);
      }
      bands.end();
      ahead.end();
    } catch (UnreadableArt e) {
      throw new CannotWrite(String.valueOf(e.getMessage()));
    } catch (TunnelledException e) {
      throw e.unpacked();
    }
  }

  private void tell(Progress work, int row) throws TunnelledException {
    try {
      work.at(row, heightPx());
    } catch (Cancelled e) {
      throw TunnelledException.of(e);
    }
  }
}
