package io.github.readfall.window.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Phone;
import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tests of views, painted into pictures without a window. */
class ViewPaintingTest {

  private static final int HEIGHT_PX = 20_000;
  private static final Phone PHONE = new Phone("small", 360, 640, 362);

  /** A pane with stripes, laid out at a size. */
  private static StripPane pane() throws Exception {
    return Strips.onEvents(
        () -> {
          StripPane pane = new StripPane();
          pane.setSize(500, 400);
          layOut(pane);
          pane.show(Strips.striped(HEIGHT_PX, 5100));
          layOut(pane);
          return pane;
        });
  }

  private static void layOut(StripPane pane) {
    pane.doLayout();
    pane.getViewport().doLayout();
    pane.view().doLayout();
  }

  private static BufferedImage painted(Component view, int device, Callable<Boolean> settled)
      throws Exception {
    photograph(view, device);
    Strips.until(
        () -> {
          try {
            return settled.call();
          } catch (Exception e) {
            throw new AssertionError(e);
          }
        },
        "settled");
    return photograph(view, device);
  }

  private static BufferedImage photograph(Component view, int device) throws Exception {
    return Strips.onEvents(
        () -> {
          BufferedImage image =
              new BufferedImage(
                  device * view.getWidth(), device * view.getHeight(), BufferedImage.TYPE_INT_RGB);
          Graphics2D g = image.createGraphics();
          g.scale(device, device);
          view.paint(g);
          g.dispose();
          return image;
        });
  }

  private static void press(StripPane pane, String key) {
    Object name = pane.view().getInputMap().get(KeyStroke.getKeyStroke(key));
    pane.view()
        .getActionMap()
        .get(name)
        .actionPerformed(new ActionEvent(pane.view(), ActionEvent.ACTION_PERFORMED, key));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void theStripIsPaintedSharpAtEveryDeviceScale(int device) throws Exception {
    StripPane pane = pane();
    BufferedImage image = painted(pane, device, Strips.view(pane)::isSettled);
    Box stripe = Strips.view(pane).toView(new Box(0, 100, 800, 100));
    int x = device * pane.getViewport().getWidth() / 2;
    int above = (int) Math.rint(device * stripe.y()) - 2;
    assertEquals(Strips.stripe(0).rgb(), image.getRGB(x, above) & 0xffffff);
    assertEquals(Strips.stripe(100).rgb(), image.getRGB(x, above + 4) & 0xffffff);
  }

  @Test
  void nothingOfALongerStripRemainsBelowAShorterOne() throws Exception {
    StripPane pane = pane();
    painted(pane, 1, Strips.view(pane)::isSettled);
    Strips.onEvents(
        () -> {
          pane.show(Strips.striped(300, 100));
          layOut(pane);
          return 0;
        });
    BufferedImage image = photograph(pane, 1);
    Box strip = Strips.view(pane).toView(new Box(0, 0, Strips.WIDTH_PX, 300));
    int below = (int) strip.bottom() + 12;
    assertTrue(below < image.getHeight() - 20, "the strip ends at " + strip.bottom());
    assertEquals(image.getRGB(2, below), image.getRGB(image.getWidth() / 2, below));
  }

  @Test
  void fitWidthLeavesOnlyAirBesideTheStrip() throws Exception {
    StripPane pane = pane();
    int room = pane.getViewport().getWidth();
    Box strip = Strips.view(pane).toView(new Box(0, 0, Strips.WIDTH_PX, 0));
    assertTrue(strip.x() > 0 && strip.x() < 30, "at " + strip.x());
    assertEquals(room - strip.x(), strip.right(), 1);
  }

  @Test
  void whatIsInTheMiddleStaysThereWhenZoomed() throws Exception {
    StripPane pane = pane();
    Strips.onEvents(
        () -> {
          pane.getViewport().setViewPosition(new Point(0, 3000));
          XY before = middle(pane);
          pane.setZoom(new Zoom.ActualPixels());
          XY after = middle(pane);
          assertEquals(before.y(), after.y(), 1.5);
          pane.setZoom(new Zoom.PhoneSize(360));
          assertEquals(before.y(), middle(pane).y(), 3);
          assertEquals(360 / Strips.WIDTH_PX, pane.scale(), 1e-9);
          return 0;
        });
  }

  private static XY middle(StripPane pane) {
    Rectangle rect = pane.getViewport().getViewRect();
    return Strips.view(pane).toStrip(new Point((int) rect.getCenterX(), (int) rect.getCenterY()));
  }

  @Test
  void keysScrollFromTheTopToTheEnd() throws Exception {
    StripPane pane = pane();
    List<VisiblePart> seen = new ArrayList<>();
    Strips.onEvents(
        () -> {
          pane.onScroll(seen::add);
          press(pane, "DOWN");
          double line = pane.visible().topPx();
          assertTrue(line > 0);
          press(pane, "PAGE_DOWN");
          assertTrue(pane.visible().topPx() > 3 * line, "a page is more than a line");
          press(pane, "END");
          assertEquals(HEIGHT_PX, pane.visible().bottomPx());
          press(pane, "HOME");
          assertEquals(0, pane.visible().topPx());
          return 0;
        });
    assertEquals(pane.visible(), seen.get(seen.size() - 1));
    assertEquals(4, seen.size(), "called once for each: " + seen);
  }

  @Test
  void plusAndMinusZoomInAndOut() throws Exception {
    StripPane pane = pane();
    Strips.onEvents(
        () -> {
          double before = pane.scale();
          press(pane, "PLUS");
          assertTrue(pane.scale() > before);
          press(pane, "MINUS");
          assertEquals(before, pane.scale(), 1e-9);
          return 0;
        });
  }

  @Test
  void whatIsRevealedIsInView() throws Exception {
    StripPane pane = pane();
    Strips.onEvents(
        () -> {
          Box box = new Box(100, 12_000, 300, 200);
          pane.reveal(box);
          assertTrue(pane.visible().topPx() < box.y());
          assertTrue(pane.visible().bottomPx() > box.bottom());
          VisiblePart before = pane.visible();
          pane.reveal(box);
          assertEquals(before, pane.visible(), "it was in view");
          return 0;
        });
  }

  @Test
  void aClickTellsThePlaceOnTheStrip() throws Exception {
    StripPane pane = pane();
    List<XY> picked = new ArrayList<>();
    Strips.onEvents(
        () -> {
          pane.onClick(picked::add);
          Box at = Strips.view(pane).toView(new Box(300, 400, 0, 0));
          click(pane, (int) at.x(), (int) at.y());
          click(pane, 1, 1);
          return 0;
        });
    assertEquals(1, picked.size(), "beside the strip there is nothing to pick");
    assertEquals(300, picked.get(0).x(), 2);
    assertEquals(400, picked.get(0).y(), 2);
  }

  private static void click(StripPane pane, int x, int y) {
    pane.view()
        .dispatchEvent(
            new MouseEvent(
                pane.view(), MouseEvent.MOUSE_CLICKED, 0, 0, x, y, 1, false, MouseEvent.BUTTON1));
  }

  @Test
  void aHighlightIsDrawnRoundItsBoxAndTakenAwayAgain() throws Exception {
    StripPane pane = pane();
    BufferedImage plain = painted(pane, 1, Strips.view(pane)::isSettled);
    Box box = new Box(200, 220, 300, 100);
    Strips.onEvents(
        () -> {
          pane.highlight(Optional.of(box));
          return 0;
        });
    BufferedImage marked = photograph(pane, 1);
    Box view = Strips.view(pane).toView(box);
    Rectangle changed = changed(plain, marked);
    assertFalse(changed.isEmpty());
    assertTrue(Highlight.reach(view).contains(changed), changed + " of " + Highlight.reach(view));
    int x = (int) view.centre().x();
    int y = (int) view.centre().y();
    assertEquals(plain.getRGB(x, y), marked.getRGB(x, y), "what is meant is not covered");
    Strips.onEvents(
        () -> {
          pane.highlight(Optional.empty());
          return 0;
        });
    assertTrue(changed(plain, photograph(pane, 1)).isEmpty());
  }

  private static Rectangle changed(BufferedImage a, BufferedImage b) {
    Rectangle changed = new Rectangle(0, 0, -1, -1);
    for (int y = 0; y < a.getHeight(); y++) {
      for (int x = 0; x < a.getWidth(); x++) {
        if (a.getRGB(x, y) != b.getRGB(x, y)) {
          changed.add(new Rectangle(x, y, 1, 1));
        }
      }
    }
    return changed;
  }

  @Test
  void viewsHaveAccessibleNames() throws Exception {
    StripPane pane = pane();
    assertEquals("Strip", pane.view().getAccessibleContext().getAccessibleName());
    assertFalse(pane.view().getAccessibleContext().getAccessibleDescription().isBlank());
    PhoneView phone = phone();
    assertEquals("Phone", phone.getAccessibleContext().getAccessibleName());
  }

  private static PhoneView phone() throws Exception {
    return Strips.onEvents(
        () -> {
          PhoneView view = new PhoneView();
          view.setSize(400, 700);
          view.setPhone(PHONE);
          view.show(Strips.striped(HEIGHT_PX, 5100));
          return view;
        });
  }

  @Test
  void aPhoneFillsItsScreenWithTheStripAndShowsNoMarks() throws Exception {
    PhoneView phone = phone();
    Strips.onEvents(
        () -> {
          phone.scrollTo(5000);
          return 0;
        });
    BufferedImage image = painted(phone, 1, phone::isSettled);
    Rectangle screen = phone.frame().screen();
    assertEquals(640.0 / 360, (double) screen.height / screen.width, 0.01);
    double perPx = Strips.WIDTH_PX / screen.width;
    for (int stripe = 50; stripe < 1300; stripe += 100) {
      int y = (int) (stripe / perPx);
      int expected = Strips.stripe(5000 + stripe).rgb();
      for (int x : new int[] {1, screen.width * 9 / 16, screen.width - 2}) {
        assertEquals(expected, image.getRGB(screen.x + x, screen.y + y) & 0xffffff, x + ", " + y);
      }
    }
    assertNotEquals(
        Strips.stripe(5000).rgb(),
        image.getRGB(screen.x - 2, screen.y + 20) & 0xffffff,
        "the strip leaves the screen");
  }

  @Test
  void aPhoneFitsIntoAnyRoom() {
    for (int[] room : new int[][] {{200, 900}, {900, 300}, {2000, 2000}, {40, 40}, {1, 1}}) {
      PhoneFrame frame = PhoneFrame.in(room[0], room[1], 16, PHONE);
      if (frame.isVisible()) {
        assertTrue(
            new Rectangle(room[0], room[1]).contains(frame.body()), room[0] + " x " + room[1]);
        assertTrue(frame.body().contains(frame.screen()));
        assertTrue(frame.baseline() <= room[1], "the words below are cut off");
      }
    }
    assertTrue(PhoneFrame.in(400, 700, 16, PHONE).isVisible());
  }

  @Test
  void aPhoneKeepsItsPlaceWhenTheSceneOrThePhoneChanges() throws Exception {
    PhoneView phone = phone();
    List<VisiblePart> parts = new ArrayList<>();
    Strips.onEvents(
        () -> {
          phone.onScroll(parts::add);
          phone.scrollTo(3000);
          phone.show(Strips.striped(HEIGHT_PX, 90));
          assertEquals(3000, phone.topPx());
          phone.setPhone(new Phone("tall", 400, 900, 362));
          assertEquals(3000, phone.topPx());
          assertEquals(1800, phone.screenPx(), 1e-9);
          phone.show(Strips.striped(2000, 90));
          assertEquals(200, phone.topPx(), 1e-9, "no further than the strip goes");
          return 0;
        });
    assertEquals(new VisiblePart(200, 2000), parts.get(parts.size() - 1));
  }

  @Test
  void playingReadsToTheEndAndStopsThere() throws Exception {
    PhoneView phone = phone();
    List<Boolean> states = new ArrayList<>();
    Strips.onEvents(
        () -> {
          phone.onPlay(states::add);
          phone.show(Strips.striped(3000, 0));
          phone.play(at -> 20_000);
          return 0;
        });
    Strips.until(() -> !phone.isPlaying(), "read to the end");
    assertEquals(3000 - phone.screenPx(), phone.topPx(), 1e-9);
    assertEquals(List.of(true, false), states);
  }
}
