package io.github.readfall.window.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import java.awt.GraphicsEnvironment;
import java.awt.Point;
import java.awt.Robot;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JFrame;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Tests of the strip in a real window. */
class StripViewWindowIT {

  private final List<Runnable> closing = new ArrayList<>();

  @BeforeEach
  void thereMustBeADisplay() {
    assumeFalse(GraphicsEnvironment.isHeadless(), "no display: windows are not tested here");
  }

  @AfterEach
  void close() throws Exception {
    Strips.onEvents(
        () -> {
          closing.forEach(Runnable::run);
          return 0;
        });
  }

  private StripPane shown(int heightPx) throws Exception {
    StripPane pane =
        Strips.onEvents(
            () -> {
              StripPane made = new StripPane();
              made.show(Strips.striped(heightPx, 5100));
              JFrame frame = new JFrame("Strip");
              frame.setContentPane(made);
              frame.setUndecorated(true);
              frame.setBounds(20, 20, 600, 500);
              frame.setVisible(true);
              closing.add(frame::dispose);
              made.view().requestFocusInWindow();
              return made;
            });
    Strips.until(() -> pane.view().isShowing() && Strips.view(pane).isSettled(), "shown");
    return pane;
  }

  @Test
  void theStripIsOnTheScreenAndScrollsUnderTheWheel() throws Exception {
    StripPane pane = shown(200_000);
    Robot robot = new Robot();
    Strips.until(() -> isSeen(pane, robot, 150), "the top of the strip on the screen");
    robot.mouseMove(300, 250);
    robot.mouseWheel(5);
    robot.waitForIdle();
    Strips.until(() -> pane.visible().topPx() > 100, "scrolled");
    double middle = (pane.visible().topPx() + pane.visible().bottomPx()) / 2;
    double stripe = Math.floor(middle / 100) * 100 + 50;
    Strips.until(() -> isSeen(pane, robot, stripe), "what was scrolled to");
  }

  @Test
  void controlAndTheWheelZoomAtThePointer() throws Exception {
    StripPane pane = shown(20_000);
    Robot robot = new Robot();
    double before = pane.scale();
    robot.mouseMove(300, 300);
    robot.keyPress(KeyEvent.VK_CONTROL);
    robot.mouseWheel(-3);
    robot.keyRelease(KeyEvent.VK_CONTROL);
    Strips.until(() -> pane.scale() > 1.2 * before, "larger");
    assertTrue(pane.zoom() instanceof Zoom.Factor, pane.zoom().toString());
  }

  /** Whether a stripe has its colour on the screen. */
  private static boolean isSeen(StripPane pane, Robot robot, double y) {
    Box at = Strips.view(pane).toView(new Box(100, y, 0, 0));
    Point origin = pane.view().getLocationOnScreen();
    int rgb =
        robot.getPixelColor(origin.x + (int) at.x(), origin.y + (int) at.y()).getRGB() & 0xffffff;
    return rgb == Strips.stripe(y).rgb();
  }

  @Test
  void theEndOfAVeryLongStripIsPaintedLikeItsTop() throws Exception {
    StripPane pane = shown(200_000);
    Robot robot = new Robot();
    Strips.onEvents(
        () -> {
          pane.setZoom(new Zoom.Factor(2));
          pane.reveal(new Box(0, 199_850, 800, 100));
          return 0;
        });
    Strips.until(() -> pane.visible().bottomPx() > 199_950, "revealed");
    Strips.until(() -> isSeen(pane, robot, 199_850), "the end of the strip on the screen");
  }

  @Test
  void aClickOfTheMousePicksAndKeysScroll() throws Exception {
    StripPane pane = shown(20_000);
    Robot robot = new Robot();
    List<XY> picked = new ArrayList<>();
    Point at =
        Strips.onEvents(
            () -> {
              pane.onClick(picked::add);
              Box box = Strips.view(pane).toView(new Box(300, 400, 0, 0));
              Point origin = pane.view().getLocationOnScreen();
              return new Point(origin.x + (int) box.x(), origin.y + (int) box.y());
            });
    robot.mouseMove(at.x, at.y);
    robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
    robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    robot.waitForIdle();
    Strips.until(() -> picked.size() == 1, "picked once");
    assertEquals(300, picked.get(0).x(), 3);
    assertEquals(400, picked.get(0).y(), 3);
    Strips.until(() -> pane.view().isFocusOwner(), "focus after a click");
    robot.keyPress(KeyEvent.VK_PAGE_DOWN);
    robot.keyRelease(KeyEvent.VK_PAGE_DOWN);
    Strips.until(() -> pane.visible().topPx() > 300, "scrolled by a key");
  }

  @Test
  void revealingGlidesAndEndsInView() throws Exception {
    StripPane pane = shown(200_000);
    List<VisiblePart> way = new ArrayList<>();
    Box box = new Box(100, 1800, 100, 100);
    Strips.onEvents(
        () -> {
          pane.onScroll(way::add);
          pane.reveal(box);
          return 0;
        });
    Strips.until(() -> pane.visible().topPx() < 1800 && pane.visible().bottomPx() > 1900, "seen");
    Thread.sleep(ScrollAnimation.DURATION_MS + 100); // until it is at rest
    assertTrue(way.size() > 2, "it jumped: " + way);
    for (int i = 1; i < way.size(); i++) {
      assertTrue(way.get(i).topPx() >= way.get(i - 1).topPx(), "it went back: " + way);
    }
  }
}
