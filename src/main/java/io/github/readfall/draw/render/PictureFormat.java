package io.github.readfall.draw.render;

import io.github.readfall.draw.Drawing;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The kinds of file a drawing can be written to. */
public enum PictureFormat {
  PNG,
  SVG;

  /** The format that a file's name ends in. */
  public static Optional<PictureFormat> of(Path file) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    return Arrays.stream(values())
        .filter(format -> name.endsWith("." + format.name().toLowerCase(Locale.ROOT)))
        .findFirst();
  }

  /**
   * Writes a drawing.
   *
   * @param dpi resolution to be stated if the format can
   * @throws IOException if the stream cannot be written
   */
  public void write(Drawing drawing, int dpi, OutputStream out) throws IOException {
    switch (this) {
      case PNG -> PngWriter.write(drawing, dpi, out);
      case SVG -> SvgWriter.write(drawing, out);
    }
  }
}
