package io.github.readfall.art.panels;

import io.github.readfall.Pixels;
import io.github.readfall.art.RowTaker;
import io.github.readfall.art.StripRows;
import io.github.readfall.base.geom.Box;
import java.awt.image.BufferedImage;
import java.util.List;

/** A made-up strip, and where its panels are. */
record DrawnStrip(BufferedImage image, List<Box> panels) {

  /** Its rows, as art would have them. */
  StripRows rows() {
    return new StripRows() {
      @Override
      public int widthPx() {
        return image.getWidth();
      }

      @Override
      public int heightPx() {
        return image.getHeight();
      }

      @Override
      public void pour(RowTaker to) {
        int width = image.getWidth();
        int[] pixels = Pixels.of(image);
        byte[] rgb = new byte[3 * width];
        for (int y = 0; y < image.getHeight(); y++) {
          for (int x = 0; x < width; x++) {
            int pixel = pixels[y * width + x];
            rgb[3 * x] = (byte) (pixel >> 16);
            rgb[3 * x + 1] = (byte) (pixel >> 8);
            rgb[3 * x + 2] = (byte) pixel;
          }
          to.row(y, rgb);
        }
      }
    };
  }
}
