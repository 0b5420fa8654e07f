package io.github.readfall.window;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;
import javax.swing.JComponent;

/** Pictures of components. */
final class Pictures {

  private Pictures() {}

  /** The pixels of a component as it is painted now. */
  static List<Integer> of(JComponent component) {
    int width = component.getWidth();
    int height = component.getHeight();
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    component.paint(g);
    g.dispose();
    return Arrays.stream(image.getRGB(0, 0, width, height, null, 0, width)).boxed().toList();
  }
}
