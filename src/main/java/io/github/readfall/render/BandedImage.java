package io.github.readfall.render;

import io.github.readfall.draw.Drawing;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.Raster;
import java.awt.image.RenderedImage;
import java.awt.image.SampleModel;
import java.awt.image.WritableRaster;
import java.util.Vector;

/**
 * A drawing as an image that is painted band by band as it is read, so that a strip of any height
 * needs the memory of one band.
 */
final class BandedImage implements RenderedImage {

  private static final int BAND_ROWS = 256;

  private final Drawing drawing;
  private final Reaches reaches;
  private final BufferedImage band;
  private final int[] painted = {-1};

  BandedImage(Drawing drawing) {
    this.drawing = drawing;
    this.reaches = Reaches.of(drawing.marks(), drawing.heightPx());
    int rows = Math.min(BAND_ROWS, drawing.heightPx());
    this.band = new BufferedImage(drawing.widthPx(), rows, BufferedImage.TYPE_3BYTE_BGR);
  }

  private void paint(int index) {
    if (painted[0] == index) {
      return;
    }
    Graphics2D g = band.createGraphics();
    g.setColor(new Color(drawing.paper().rgb()));
    g.fillRect(0, 0, band.getWidth(), band.getHeight());
    int top = index * band.getHeight();
    g.translate(0, -top);
    g.clipRect(0, top, band.getWidth(), band.getHeight());
    Java2dPainter painter = new Java2dPainter(g);
    reaches.between(top, top + band.getHeight()).forEach(mark -> mark.paintOn(painter));
    g.dispose();
    painted[0] = index;
  }

  @Override
  public Raster getTile(int tileX, int tileY) {
    paint(tileY);
    return band.getRaster().createTranslatedChild(0, tileY * band.getHeight());
  }

  @Override
  public Raster getData(Rectangle rect) {
    WritableRaster part =
        Raster.createWritableRaster(
            band.getSampleModel().createCompatibleSampleModel(rect.width, rect.height),
            new Point(rect.x, rect.y));
    return copyData(part);
  }

  @Override
  public WritableRaster copyData(WritableRaster into) {
    WritableRaster target = into == null ? everything() : into;
    Rectangle wanted = target.getBounds();
    int first = Math.floorDiv(wanted.y, band.getHeight());
    int last = Math.floorDiv(wanted.y + wanted.height - 1, band.getHeight());
    for (int index = first; index <= last; index++) {
      Raster tile = getTile(0, index);
      Rectangle common = tile.getBounds().intersection(wanted);
      target.setRect(
          tile.createChild(
              common.x, common.y, common.width, common.height, common.x, common.y, null));
    }
    return target;
  }

  private WritableRaster everything() {
    return Raster.createWritableRaster(
        band.getSampleModel().createCompatibleSampleModel(getWidth(), getHeight()),
        new Point(0, 0));
  }

  @Override
  public Raster getData() {
    return copyData(everything());
  }

  @Override
  public Vector<RenderedImage> getSources() {
    return new Vector<>();
  }

  @Override
  public Object getProperty(String name) {
    return java.awt.Image.UndefinedProperty;
  }

  @Override
  public String[] getPropertyNames() {
    return new String[0];
  }

  @Override
  public ColorModel getColorModel() {
    return band.getColorModel();
  }

  @Override
  public SampleModel getSampleModel() {
    return band.getSampleModel();
  }

  @Override
  public int getWidth() {
    return drawing.widthPx();
  }

  @Override
  public int getHeight() {
    return drawing.heightPx();
  }

  @Override
  public int getMinX() {
    return 0;
  }

  @Override
  public int getMinY() {
    return 0;
  }

  @Override
  public int getNumXTiles() {
    return 1;
  }

  @Override
  public int getNumYTiles() {
    return (getHeight() + band.getHeight() - 1) / band.getHeight();
  }

  @Override
  public int getMinTileX() {
    return 0;
  }

  @Override
  public int getMinTileY() {
    return 0;
  }

  @Override
  public int getTileWidth() {
    return band.getWidth();
  }

  @Override
  public int getTileHeight() {
    return band.getHeight();
  }

  @Override
  public int getTileGridXOffset() {
    return 0;
  }

  @Override
  public int getTileGridYOffset() {
    return 0;
  }
}
