package io.github.readfall.draw.render;

import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.stream.ImageOutputStream;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Makes pictures into JPEG, by the JDK's writer. Colours keep their full resolution, since coloured
 * letters would have frayed edges otherwise.
 *
 * @param widthPx of the pictures
 * @param quality from 1 to 100
 * @param dpi resolution to be stated
 */
public record JpegBytes(int widthPx, int quality, int dpi) {

  private static final String FORMAT = "javax_imageio_jpeg_image_1.0";
  private static final int MOST_DPI = 65_535;
  private static final float PER_CENT = 100;

  /**
   * One picture.
   *
   * @param rgb rows one after another
   * @param from the first row
   * @param rows how many
   * @throws IOException never, but for want of memory
   */
  public byte[] of(byte[] rgb, int from, int rows) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
      BufferedImage image = image(rgb, from, rows);
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality(quality / PER_CENT);
      IIOMetadata metadata = writer.getDefaultImageMetadata(new ImageTypeSpecifier(image), param);
      Element tree = (Element) metadata.getAsTree(FORMAT);
      state(tree);
      metadata.setFromTree(FORMAT, tree);
      writer.setOutput(out);
      writer.write(null, new IIOImage(image, null, metadata), param);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  private BufferedImage image(byte[] rgb, int from, int rows) {
    ComponentColorModel colours =
        new ComponentColorModel(
            ColorSpace.getInstance(ColorSpace.CS_sRGB),
            false,
            false,
            ComponentColorModel.OPAQUE,
            DataBuffer.TYPE_BYTE);
    int rowBytes = 3 * widthPx;
    DataBufferByte data = new DataBufferByte(rgb, rgb.length);
    int[] samples = {from * rowBytes, from * rowBytes + 1, from * rowBytes + 2};
    WritableRaster raster =
        Raster.createInterleavedRaster(data, widthPx, rows, rowBytes, 3, samples, null);
    return new BufferedImage(colours, raster, false, null);
  }

  private void state(Element tree) {
    NodeList heads = tree.getElementsByTagName("app0JFIF");
    for (int i = 0; i < heads.getLength(); i++) {
      Element head = (Element) heads.item(i);
      String size = Integer.toString(Math.min(MOST_DPI, dpi));
      head.setAttribute("resUnits", "1"); // per inch
      head.setAttribute("Xdensity", size);
      head.setAttribute("Ydensity", size);
    }
    NodeList components = tree.getElementsByTagName("componentSpec");
    for (int i = 0; i < components.getLength(); i++) {
      Element component = (Element) components.item(i);
      component.setAttribute("HsamplingFactor", "1");
      component.setAttribute("VsamplingFactor", "1");
    }
  }
}
