package io.github.readfall.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import io.github.readfall.base.viewing.Phone;
import io.github.readfall.window.canvas.PhoneView;
import java.awt.GraphicsEnvironment;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JToggleButton;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Phones at true size, and how large their letters look to readers, in a real window. */
class TrueSizeWindowIT {

  private static final String SCRIPT =
      """
      Title: Ebb
      Language: en
      Cast: Ilse, Wouter

      PANEL 1
      The mill.

      ILSE: It turns.

      PANEL 2
      Water.

      PANEL 3
      More water.

      PANEL 4
      The wheel.

      WOUTER (whisper): Leave it be.
      """;

  private final Path folder;

  TrueSizeWindowIT(@TempDir Path folder) {
    this.folder = folder;
  }

  @BeforeEach
  void aDisplayIsThere() {
    assumeFalse(GraphicsEnvironment.isHeadless(), "there is no display: the window was not tested");
  }

  private OpenWindow open() throws Exception {
    Path script = folder.resolve("ebb").resolve("script.txt");
    Files.createDirectories(script.getParent());
    Files.writeString(
        folder.resolve("series.toml"),
        """
        [phones.pocket]
        width-dp = 360

        [phones.large]
        width-dp = 430
        height-dp = 932

        [manners.whisper]
        size = 0.85
        """);
    Files.writeString(script, SCRIPT);
    OpenWindow window = OpenWindow.with(folder.resolve("state"), script);
    window.settled();
    return window;
  }

  private static JToggleButton toggle(OpenWindow window) {
    return (JToggleButton) window.named("phone.true");
  }

  private static PhoneView phone(OpenWindow window) {
    return window.window().work().phone();
  }

  private static void hasFocus(OpenWindow window, JComponent part) {
    window.waitUntil("it has the keyboard", part::isFocusOwner);
  }

  /** Ten times farther with Page Up, and so many half pixels with the arrows. */
  private static void widen(OpenWindow window, int leaps, int steps) {
    JComponent width = Dialogs.part(window, "card", "card.width");
    window.run(width::requestFocusInWindow);
    hasFocus(window, width);
    for (int i = 0; i < leaps; i++) {
      window.key(KeyEvent.VK_PAGE_UP);
    }
    for (int i = 0; i < steps; i++) {
      window.key(KeyEvent.VK_RIGHT);
    }
  }

  /** How many pixels of a row of the screen are those of the strip, not of the phone round it. */
  private static int paintedWidth(OpenWindow window) {
    BufferedImage image = window.photograph(1);
    JComponent view = phone(window);
    return window.ask(
        () -> {
          Point at =
              SwingUtilities.convertPoint(
                  view,
                  (int) phone(window).screen().getCenterX(),
                  (int) phone(window).screen().getCenterY(),
                  window.window().frame().getRootPane());
          int left = at.x;
          int right = at.x;
          while (!isBody(image, left - 1, at.y)) {
            left--;
          }
          while (!isBody(image, right + 1, at.y)) {
            right++;
          }
          return right - left + 1;
        });
  }

  private static boolean isBody(BufferedImage image, int x, int y) {
    return (image.getRGB(x, y) & 0xffffff) == 0x2b2d30;
  }

  /**
   * A card is 85.60 mm wide (ISO/IEC 7810, ID-1), 323.5 pixels at 96 to the inch; 20 more with Page
   * Up, one with the arrows: where it takes 344.5 pixels, 57.15 mm, which are 360 dp, take 230.0,
   * and 68.26 mm, 430 dp, take 274.7.
   */
  @Test
  void aScreenIsMeasuredByKeysAndRememberedAndThePhoneIsAsWideAsInTheHand() throws Exception {
    try (OpenWindow window = open()) {
      window.run(() -> toggle(window).requestFocusInWindow());
      hasFocus(window, toggle(window));
      window.key(KeyEvent.VK_SPACE);
      window.waitUntil("it is asked how wide", () -> Dialogs.isOpen(window, "card"));
      assertFalse(window.ask(toggle(window)::isSelected));
      widen(window, 2, 2);
      JLabel said = (JLabel) Dialogs.part(window, "card", "card.result");
      assertEquals("4.02 pixels per millimetre, 102.2 per inch", window.ask(said::getText));
      window.key(KeyEvent.VK_ENTER);
      window.waitUntil("it is true", toggle(window)::isSelected);
      assertFalse(window.ask(() -> Dialogs.isOpen(window, "card")));
      window.waitUntil("it is laid out", () -> phone(window).screen().width == 230);
      assertEquals(230, paintedWidth(window), 1);
      JTextComponent how = (JTextComponent) window.named("phone.true.how");
      assertTrue(window.ask(how::getText).contains("Look at it from 36\u00a0cm"));
      window.run(() -> window.window().work().phoneColumn().see(large()));
      window.waitUntil("it is laid out", () -> phone(window).screen().width == 275);
    }
    try (OpenWindow window = open()) {
      window.run(() -> toggle(window).doClick(0));
      assertTrue(window.ask(toggle(window)::isSelected));
      assertFalse(window.ask(() -> Dialogs.isOpen(window, "card")));
    }
  }

  private static Phone large() {
    return new Phone("large", 430, 932, 362);
  }

  @Test
  void aScreenThatIsNotMeasuredShowsNoTrueSize() throws Exception {
    try (OpenWindow window = open()) {
      int before = window.ask(() -> phone(window).screen().width);
      window.choose("menu.trueSize");
      window.waitUntil("it is asked how wide", () -> Dialogs.isOpen(window, "card"));
      window.run(() -> Dialogs.part(window, "card", "card.width").requestFocusInWindow());
      window.key(KeyEvent.VK_ESCAPE);
      window.waitUntil("it is closed", () -> !Dialogs.isOpen(window, "card"));
      assertFalse(window.ask(toggle(window)::isSelected));
      assertEquals(before, window.ask(() -> phone(window).screen().width));
    }
  }

  @Test
  void aCardIsDraggedAndAPhoneThatIsTooLargeIsScrolledByKeys() throws Exception {
    try (OpenWindow window = open()) {
      window.choose("menu.trueSize");
      window.waitUntil("it is asked how wide", () -> Dialogs.isOpen(window, "card"));
      JComponent card = Dialogs.part(window, "card", "card.frame");
      int before = window.ask(() -> card.getPreferredSize().width);
      window.drag(card, new Point(before - 16, 60), new Point(before + 584, 60));
      window.waitUntil("it is wider", () -> card.getPreferredSize().width == before + 600);
      window.run(() -> ((JButton) Dialogs.part(window, "card", "card.keep")).doClick(0));
    }
    try (OpenWindow window = open()) { // the keyboard was the dialog's
      window.run(() -> toggle(window).doClick(0));
      PhoneView phone = phone(window);
      window.waitUntil("it is large", () -> phone.screen().width > 600);
      JScrollPane pane = (JScrollPane) phone.getParent().getParent();
      window.choose("menu.toPhone");
      hasFocus(window, phone);
      double read = window.ask(phone::topPx);
      window.key(KeyEvent.VK_RIGHT);
      window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_DOWN);
      window.waitUntil("it is scrolled", () -> pane.getViewport().getViewPosition().x > 0);
      window.waitUntil("it is scrolled", () -> pane.getViewport().getViewPosition().y > 0);
      assertEquals(read, window.ask(phone::topPx));
    }
  }

  @Test
  void aRowOfTheReadersLeadsToItsPhoneAndToTheSmallestBalloon() throws Exception {
    try (OpenWindow window = open()) {
      window.run(() -> window.window().work().editor().goTo(8, 1));
      window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_9);
      JTable table = (JTable) window.named("readers.table");
      hasFocus(window, table);
      window.key(KeyEvent.VK_DOWN);
      window.key(KeyEvent.VK_DOWN);
      window.waitUntil("the second phone is seen", () -> phone(window).phone().widthDp() == 430);
      window.waitUntil(
          "the caret is at the whisper",
          () -> window.window().work().editor().caret().line() == 19);
      window.waitUntil("the whisper is on the strip", () -> isSeen(window));
      window.key(KeyEvent.VK_DOWN);
      window.waitUntil(
          "the nearest reader holds the phone", () -> phone(window).phone().distanceMm() == 292);
      window.run(() -> window.window().work().editor().goTo(19, 34));
      window.run(() -> window.window().work().editor().focusText());
      window.key(KeyEvent.VK_END);
      window.type(" or not");
      window.settled();
      window.waitUntil(
          "the table follows",
          () -> table.getValueAt(0, 5).toString().endsWith("Leave it be. or not"));
      assertEquals(2, window.ask(table::getSelectedRow));
    }
  }

  private static boolean isSeen(OpenWindow window) {
    var seen = window.window().work().strip().visible();
    var box =
        window.window().model().shown().orElseThrow().galley().balloons().stream()
            .filter(balloon -> balloon.id().equals("p4-1"))
            .findFirst()
            .orElseThrow()
            .box();
    return seen.topPx() <= box.y() && box.bottom() <= seen.bottomPx();
  }
}
