package io.github.readfall.export.raster;

import io.github.readfall.base.files.Batch;
import io.github.readfall.base.files.Cancelled;
import io.github.readfall.base.files.CannotWrite;
import io.github.readfall.base.files.OutputTray;
import io.github.readfall.base.files.Progress;
import io.github.readfall.draw.render.PngStream;
import java.io.IOException;
import java.util.List;

/**
 * The whole strip as one PNG.
 *
 * @param strip to be shown
 */
public record WholePng(StripPicture strip) implements Batch {

  @Override
  public List<String> names() {
    return List.of(strip.stem() + "-strip.png");
  }

  @Override
  public void writeTo(OutputTray tray, Progress work) throws IOException, CannotWrite, Cancelled {
    try (PngStream png =
        new PngStream(
            tray.open(names().get(0)),
            strip.widthPx(),
            strip.heightPx(),
            PngStream.Samples.RGB,
            strip.dpi())) {
      strip.pour(png::row, work);
      png.end();
    }
  }
}
