package io.github.readfall.art.panels;

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
        int[] pixels = new int[width];
        byte[] rgb = new byte[3 * width];
        for (int y = 0; y < image.getHeight(); y++) {
          image.getRGB(0, y, width, 1, pixels, 0, width);
          for (int x = 0; x < width; x++) {
            rgb[3 * x] = (byte) (pixels[x] >> 16);
            rgb[3 * x + 1] = (byte) (pixels[x] >> 8);
            rgb[3 * x + 2] = (byte) pixels[x];
          }
          to.row(y, rgb);
        }
      }
    };
  }
}
