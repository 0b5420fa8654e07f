package io.github.readfall.render;

import io.github.readfall.draw.Drawing;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Iterator;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;

/** Writes a drawing as PNG, with its resolution. */
public final class PngWriter {

  private static final String FORMAT = "javax_imageio_png_1.0";
  private static final double INCHES_PER_METRE = 1 / 0.0254;

  private PngWriter() {}

  /**
   * Writes band by band.
   *
   * @param dpi resolution to be stated in the file (PNG specification, pHYs)
   * @throws IOException where the stream cannot be written
   */
  public static void write(Drawing drawing, int dpi, OutputStream out) throws IOException {
    Iterator<ImageWriter> writers = ImageIO.getImageWritersByFormatName("png");
    ImageWriter writer = writers.next();
    try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
      BandedImage image = new BandedImage(drawing);
      IIOMetadata metadata =
          writer.getDefaultImageMetadata(
              new ImageTypeSpecifier(image), writer.getDefaultWriteParam());
      metadata.mergeTree(FORMAT, resolution(dpi));
      writer.setOutput(stream);
      writer.write(new IIOImage(image, null, metadata));
    } finally {
      writer.dispose();
    }
  }

  private static IIOMetadataNode resolution(int dpi) {
    String perMetre = Long.toString(Math.round(dpi * INCHES_PER_METRE));
    IIOMetadataNode size = new IIOMetadataNode("pHYs");
    size.setAttribute("pixelsPerUnitXAxis", perMetre);
    size.setAttribute("pixelsPerUnitYAxis", perMetre);
    size.setAttribute("unitSpecifier", "meter");
    IIOMetadataNode root = new IIOMetadataNode(FORMAT);
    root.appendChild(size);
    return root;
  }
}
