package io.github.readfall.phone;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/** Takes pictures of a page, for the eyes of whoever changes it. */
final class Look {
  public static void main(String[] args) throws Exception {
    Path page = Path.of(args[0]);
    String name = args[1];
    int w = Integer.parseInt(args[2]);
    int h = Integer.parseInt(args[3]);
    try (Browser b = Browser.start(Files.createTempDirectory("prof"))) {
      b.screen(w, h, 2);
      b.scheme(args[4]);
      b.open(page);
      for (int i = 5; i < args.length; i++) {
        if (args[i].startsWith("js:")) System.out.println(b.value(args[i].substring(3)));
        else b.press(args[i]);
      }
      Thread.sleep(200);
      BufferedImage im = b.picture();
      ImageIO.write(im, "png", new java.io.File(name));
    }
  }
}
