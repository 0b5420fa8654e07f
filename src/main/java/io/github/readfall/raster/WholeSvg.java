package io.github.readfall.raster;

import io.github.readfall.draw.Drawing;
import io.github.readfall.outbox.Batch;
import io.github.readfall.outbox.Halted;
import io.github.readfall.outbox.Tray;
import io.github.readfall.outbox.Unwritten;
import io.github.readfall.outbox.Work;
import io.github.readfall.render.SvgWriter;
import io.github.readfall.viewing.Colour;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/**
 * The whole strip as one SVG, with its art in it.
 *
 * @param strip what is seen in it
 * @param letters how letters are written
 */
public record WholeSvg(StripPicture strip, SvgWriter.Letters letters) implements Batch {

  @Override
  public List<String> names() {
    return List.of(strip.stem() + "-strip.svg");
  }

  @Override
  public void writeTo(Tray tray, Work work) throws IOException, Unwritten, Halted {
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
    } catch (Carried e) {
      throw e.unpacked();
    }
  }
}
