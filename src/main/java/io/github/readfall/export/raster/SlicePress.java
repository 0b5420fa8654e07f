package io.github.readfall.export.raster;

import io.github.readfall.base.OneCall;
import io.github.readfall.base.files.CannotWrite;
import io.github.readfall.draw.render.JpegBytes;
import io.github.readfall.draw.render.PngStream;
import io.github.readfall.lettering.style.Delivery;
import io.github.readfall.lettering.style.SliceFormat;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.OptionalInt;

/**
 * Makes slices into files that are not too large: a JPEG loses quality first, then the slice is
 * divided.
 */
@OneCall
final class SlicePress {

  /** House defaults: below the least, letters begin to have visible halos. */
  private static final int LEAST_QUALITY = 80;

  private static final int STEP = 5;

  /** No slice is divided into lower ones than this. House default. */
  private static final int LEAST_ROWS = 64;

  private final SliceFiles files;
  private final SlicePlan plan;
  private final Opening opening;
  private int written;

  /** Opens the file of a slice. */
  interface Opening {
    OutputStream open(int index) throws IOException;
  }

  SlicePress(SliceFiles files, SlicePlan plan, Opening opening) {
    this.files = files;
    this.plan = plan;
    this.opening = opening;
  }

  /**
   * Writes a slice, or the smaller ones that it has to be divided into.
   *
   * @param rgb its rows one after another
   * @param top its first row's place
   */
  void press(byte[] rgb, int top) throws IOException {
    press(new Part(rgb, 0, rgb.length / (3 * plan.widthPx())), top);
  }

  /** Some rows of a slice. */
  private static final class Part {

    private final byte[] rgb;
    private final int from;
    private final int rows;

    Part(byte[] rgb, int from, int rows) {
      this.rgb = rgb;
      this.from = from;
      this.rows = rows;
    }
  }

  private void press(Part part, int top) throws IOException {
    byte[] file = packed(part);
    if (file.length <= delivery().maxSliceBytes()) {
      try (OutputStream out = opening.open(written++)) {
        out.write(file);
      }
      return;
    }
    OptionalInt cut = plan.rows().dividing(top, top + part.rows, LEAST_ROWS);
    int upper = cut.orElseThrow(() -> tooLarge(part, top, file.length)) - top;
    press(new Part(part.rgb, part.from, upper), top);
    press(new Part(part.rgb, part.from + upper, part.rows - upper), top + upper);
  }

  private Delivery delivery() {
    return files.delivery();
  }

  private byte[] packed(Part part) throws IOException {
    if (delivery().format() == SliceFormat.PNG) {
      return png(part);
    }
    int quality = delivery().quality();
    byte[] file = jpeg(part, quality);
    while (file.length > delivery().maxSliceBytes() && quality > LEAST_QUALITY) {
      quality = Math.max(LEAST_QUALITY, quality - STEP);
      file = jpeg(part, quality);
    }
    return file;
  }

  private byte[] png(Part part) throws IOException {
    int rowBytes = 3 * plan.widthPx();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    byte[] row = new byte[rowBytes];
    try (PngStream png =
        new PngStream(out, plan.widthPx(), part.rows, PngStream.Samples.RGB, dpi())) {
      for (int y = part.from; y < part.from + part.rows; y++) {
        System.arraycopy(part.rgb, y * rowBytes, row, 0, rowBytes);
        png.row(row);
      }
      png.end();
    }
    return out.toByteArray();
  }

  private byte[] jpeg(Part part, int quality) throws IOException {
    return new JpegBytes(plan.widthPx(), quality, dpi()).of(part.rgb, part.from, part.rows);
  }

  private int dpi() {
    return files.strip().dpi();
  }

  private TunnelledException tooLarge(Part part, int top, int bytes) {
    return TunnelledException.of(
        new CannotWrite(
            "The slice of "
                + files.strip().stem()
                + " from row "
                + top
                + " to "
                + (top + part.rows)
                + " has "
                + bytes
                + " bytes and cannot be divided further: raise max-slice-bytes, or make the slices"
                + " narrower or JPEG, in [delivery] of series.toml."));
  }
}
