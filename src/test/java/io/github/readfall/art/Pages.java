package io.github.readfall.art;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.SplittableRandom;
import javax.imageio.ImageIO;

/** Made-up pages of art. */
final class Pages {

  private Pages() {}

  /** A page of coloured blocks, no two pages alike. */
  static BufferedImage page(int width, int height, int type, long seed) {
    BufferedImage page = new BufferedImage(width, height, type);
    SplittableRandom random = new SplittableRandom(seed);
    Graphics2D g = page.createGraphics();
    g.setColor(new Color(random.nextInt(0xffffff)));
    g.fillRect(0, 0, width, height);
    for (int i = 0; i < 60; i++) {
      g.setColor(new Color(random.nextInt(0xffffff)));
      int x = random.nextInt(width);
      int y = random.nextInt(height);
      g.fillRect(x, y, 1 + random.nextInt(width / 2), 1 + random.nextInt(40));
    }
    g.dispose();
    return page;
  }

  static Path write(BufferedImage page, Path file) throws IOException {
    String name = file.getFileName().toString();
    ImageIO.write(page, name.substring(name.lastIndexOf('.') + 1), file.toFile());
    return file;
  }

  /** As the whole file is decoded by the JDK. */
  static BufferedImage decoded(Path file) throws IOException {
    BufferedImage read = ImageIO.read(file.toFile());
    BufferedImage plain =
        new BufferedImage(read.getWidth(), read.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = plain.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, read.getWidth(), read.getHeight());
    g.drawImage(read, 0, 0, null);
    g.dispose();
    return plain;
  }
}
