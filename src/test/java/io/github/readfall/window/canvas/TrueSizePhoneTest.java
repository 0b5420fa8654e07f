package io.github.readfall.window.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.viewing.Phone;
import io.github.readfall.base.viewing.ScreenScale;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tests of phones in true size, painted into pictures without a window. */
class TrueSizePhoneTest {

  private static final Phone PHONE = new Phone("small", 360, 640, 362);

  private static PhoneView view(double pxPerInch, int width, int height) throws Exception {
    return Strips.onEvents(
        () -> {
          PhoneView view = new PhoneView();
          PhonePane pane = new PhonePane(view);
          view.setPhone(PHONE);
          view.setScale(Optional.of(new ScreenScale(pxPerInch / 25.4)));
          view.show(Strips.striped(20_000, 5100));
          pane.setSize(width, height);
          pane.doLayout();
          pane.getViewport().doLayout();
          return view;
        });
  }

  private static BufferedImage photograph(PhoneView view, int device) throws Exception {
    return Strips.onEvents(
        () -> {
          int width = device * view.getWidth();
          int height = device * view.getHeight();
          BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
          Graphics2D g = image.createGraphics();
          g.scale(device, device);
          view.paint(g);
          g.dispose();
          return image;
        });
  }

  /**
   * 360 dp are 2.25 inches, as dp are 1/160 inch (Android developer documentation, "Support
   * different pixel densities"); what is counted are the pixels in which the strip is painted.
   */
  @ParameterizedTest
  @CsvSource({"1, 96, 216", "2, 96, 432", "1, 160, 360", "2, 120, 540", "3, 96, 648"})
  void theStripIsSoManyDotsWide(int device, double pxPerInch, int dots) throws Exception {
    PhoneView view = view(pxPerInch, 500, 900);
    photograph(view, device);
    Strips.until(view::isSettled, "painted");
    BufferedImage image = photograph(view, device);
    Rectangle screen = view.screen();
    int y = device * (screen.y + screen.height / 2);
    int stripe = image.getRGB(device * (screen.x + screen.width / 2), y);
    int painted = 0;
    for (int x = 0; x < image.getWidth(); x++) {
      painted += image.getRGB(x, y) == stripe ? 1 : 0;
    }
    assertEquals(dots, painted, device);
  }

  @Test
  void aPhoneThatDoesNotFitIsScrolledAndOthersAreCentred() throws Exception {
    PhoneView large = view(300, 400, 500);
    assertTrue(large.getWidth() > 675, "675 px wide, and air: " + large.getWidth());
    assertTrue(large.getHeight() > 1200, "1200 px tall, and air: " + large.getHeight());
    Rectangle all = new Rectangle(large.getWidth(), large.getHeight());
    assertTrue(all.contains(large.screen()), large.screen() + " in " + all);
    PhoneView small = view(96, 400, 700);
    assertEquals(new Dimension(400, 700), small.getSize());
    assertEquals(200, small.screen().getCenterX(), 1);
  }

  @Test
  void withoutAScaleThePhoneIsAsLargeAsThereIsRoom() throws Exception {
    PhoneView view = view(96, 400, 700);
    int trueWidth = view.screen().width;
    Strips.onEvents(
        () -> {
          view.setScale(Optional.empty());
          view.getParent().getParent().doLayout();
          view.getParent().doLayout();
          return 0;
        });
    assertEquals(216, trueWidth);
    assertEquals(PhoneFrame.in(400, 700, 16, PHONE).screen().width, view.screen().width, 20);
  }
}
