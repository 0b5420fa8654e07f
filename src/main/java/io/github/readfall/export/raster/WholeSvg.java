package io.github.readfall.export.raster;

import io.github.readfall.base.files.Batch;
import io.github.readfall.base.files.Cancelled;
import io.github.readfall.base.files.CannotWrite;
import io.github.readfall.base.files.OutputTray;
import io.github.readfall.base.files.Progress;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.draw.Drawing;
import io.github.readfall.draw.render.SvgWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/**
 * The whole strip as one SVG, with its art in it.
 *
 * @param strip to be shown
 * @param letters form of letters
 */
public record WholeSvg(StripPicture strip, SvgWriter.Letters letters) implements Batch {

  @Override
  public List<String> names() {
    return List.of(strip.stem() + "-strip.svg");
  }

  @Override
  public void writeTo(OutputTray tray, Progress work) throws IOException, CannotWrite, Cancelled {
    Drawing drawing =
        new Drawing(
            strip.title(),
            strip.language(),
            strip.widthPx(),
            strip.heightPx(),
            Colour.WHITE,
            strip.marks());
    try (OutputStream out = tray.open(names().get(0))) {
      SvgWriter.write(drawing, new SvgArt(strip, work), letters, out);
    } catch (TunnelledException e) {
      throw e.unpacked();
    }
  }
}
