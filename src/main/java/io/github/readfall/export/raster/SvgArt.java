package io.github.readfall.export.raster;

import io.github.readfall.art.ArtPage;
import io.github.readfall.art.UnreadableArt;
import io.github.readfall.base.files.Cancelled;
import io.github.readfall.base.files.CannotWrite;
import io.github.readfall.base.files.Progress;
import io.github.readfall.base.geom.Box;
import io.github.readfall.draw.render.PngStream;
import io.github.readfall.draw.render.SvgWriter;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;

/**
 * White paper and a strip's art over it, as pictures within an SVG (RFC 2397, RFC 4648): a JPEG of
 * the strip's width as it is on disk, everything else as PNG.
 */
record SvgArt(StripPicture strip, Progress work) implements SvgWriter.Ground {

  /** Few programs show pictures that are taller than 16 384 px. House default. */
  private static final int MOST_ROWS = 4096;

  @Override
  public void writeTo(OutputStream out) throws IOException {
    say("<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>", out);
    for (ArtPage page : strip.art().pages()) {
      try {
        work.at((long) page.box().y(), strip.heightPx());
        if (page.isJpegAsItIs()) {
          jpeg(page, out);
        } else {
          png(page, out);
        }
      } catch (UnreadableArt e) {
        throw TunnelledException.of(new CannotWrite(String.valueOf(e.getMessage())));
      } catch (Cancelled e) {
        throw TunnelledException.of(e);
      }
    }
  }

  /** Writes a JPEG after reading it once, since nothing else checks that it is whole. */
  private static void jpeg(ArtPage page, OutputStream out) throws IOException, UnreadableArt {
    page.pour(row -> {});
    try (OutputStream image = image(page.box(), "image/jpeg", out)) {
      Files.copy(page.file(), image);
    }
  }

  private void png(ArtPage page, OutputStream out) throws IOException, UnreadableArt {
    int height = (int) page.box().height();
    List<Integer> ends = new ArrayList<>();
    for (int end = MOST_ROWS; end < height; end += MOST_ROWS) {
      ends.add(end);
    }
    ends.add(height);
    Pieces pieces =
        new Pieces(
            ends,
            (index, top, rows) -> {
              Box box = new Box(0, page.box().y() + top, page.box().width(), rows);
              OutputStream image = image(box, "image/png", out);
              return new PngStream(
                  image, strip.widthPx(), rows, PngStream.Samples.RGB, strip.dpi());
            });
    try (pieces) {
      page.pour(pieces);
    }
  }

  /** An element that takes a picture's bytes; closing it ends the element and nothing else. */
  private static OutputStream image(Box box, String type, OutputStream out) throws IOException {
    say("<image xmlns:xlink=\"http://www.w3.org/1999/xlink\" preserveAspectRatio=\"none\"", out);
    say(" x=\"0\" y=\"" + (int) box.y() + "\" width=\"" + (int) box.width(), out);
    say("\" height=\"" + (int) box.height(), out);
    say("\" xlink:href=\"data:" + type + ";base64,", out);
    return Base64.getEncoder().wrap(new Attribute(out));
  }

  private static void say(String ascii, OutputStream out) throws IOException {
    out.write(ascii.getBytes(StandardCharsets.US_ASCII));
  }

  /** The end of an element, from within its last attribute. */
  private static final class Attribute extends FilterOutputStream {

    Attribute(OutputStream out) {
      super(out);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
      out.write(bytes, from, length);
    }

    @Override
    public void close() throws IOException {
      say("\"/>", out);
    }
  }
}
