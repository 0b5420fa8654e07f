package io.github.readfall.raster;

import io.github.readfall.outbox.Batch;
import io.github.readfall.outbox.Halted;
import io.github.readfall.outbox.Tray;
import io.github.readfall.outbox.Unwritten;
import io.github.readfall.outbox.Work;
import io.github.readfall.render.PngStream;
import java.io.IOException;
import java.util.List;

/**
 * The whole strip as one PNG.
 *
 * @param strip what is seen in it
 */
public record WholePng(StripPicture strip) implements Batch {

  @Override
  public List<String> names() {
    return List.of(strip.stem() + "-strip.png");
  }

  @Override
  public void writeTo(Tray tray, Work work) throws IOException, Unwritten, Halted {
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
