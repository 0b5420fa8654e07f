package io.github.readfall.export.phone;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;

/** Draws docs/pictures/phone-proof.png, from the sample's phone proof in a browser. */
final class PhoneProofPicture {

  private static final int WIDTH = 360;
  private static final int HEIGHT = 640;
  private static final int GAP = 20;

  private PhoneProofPicture() {}

  public static void main(String[] args) throws IOException, InterruptedException {
    List<String> languages = List.of("en", "de", "es", "ar"); // whose names every machine can show
    Path folder = Files.createTempDirectory("picture");
    Path file = DrawnEpisode.of(DrawnEpisode.EPISODE, languages, folder).file("-phone.html");
    try (Browser browser = Browser.start(Files.createTempDirectory("profile"))) {
      browser.screen(WIDTH, HEIGHT, 1);
      browser.open(file);
      BufferedImage found = found(browser);
      browser.scheme("dark");
      browser.open(file);
      BufferedImage menu = menu(browser);
      ImageIO.write(beside(found, menu), "png", new File("docs/pictures/phone-proof.png"));
    }
  }

  private static BufferedImage found(Browser browser) throws InterruptedException {
    browser.value("document.getElementById('show-de').click()");
    browser.value("document.querySelector('#in-de .strip summary').click()");
    browser.value(
        "document.querySelector('#in-de .strip summary').scrollIntoView({block: 'center'})");
    return settled(browser);
  }

  private static BufferedImage menu(Browser browser) throws InterruptedException {
    browser.value("document.querySelector('#in-en .transcript').scrollIntoView()");
    browser.value("document.querySelector('.menu > summary').click()");
    return settled(browser);
  }

  private static BufferedImage settled(Browser browser) throws InterruptedException {
    Thread.sleep(500);
    return browser.picture();
  }

  private static BufferedImage beside(BufferedImage left, BufferedImage right) {
    BufferedImage both = new BufferedImage(2 * WIDTH + GAP, HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = both.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, both.getWidth(), HEIGHT);
    g.drawImage(left, 0, 0, null);
    g.drawImage(right, WIDTH + GAP, 0, null);
    g.dispose();
    return both;
  }
}
