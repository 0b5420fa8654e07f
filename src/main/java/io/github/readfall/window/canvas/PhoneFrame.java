package io.github.readfall.window.canvas;

import io.github.readfall.base.viewing.Phone;
import io.github.readfall.base.viewing.TrueSize;
import java.awt.Dimension;
import java.awt.Rectangle;

/**
 * The outline of a plain phone, as large as fits, with a line of text below. Lengths are
 * user-interface pixels; the shares are of the screen's width, and house defaults.
 *
 * @param body the phone from edge to edge
 * @param screen the area that the strip fills
 * @param baseline of the text below
 */
record PhoneFrame(Rectangle body, Rectangle screen, int baseline) {

  private static final double SIDE = 0.035;
  private static final double ENDS = 0.075;
  private static final double CORNER = 0.16;

  /** The largest phone that is drawn, in pixels to a density-independent pixel. */
  private static final double LARGEST = 1.25;

  /** The largest that fits into a width and height, in the middle. */
  static PhoneFrame in(int width, int height, int lineHeight, Phone phone) {
    int air = lineHeight;
    double roomWidth = width - 2.0 * air;
    double roomHeight = height - 2.0 * air - 2.0 * lineHeight;
    double byWidth = roomWidth / (1 + 2 * SIDE);
    double byHeight = roomHeight / (phone.heightDp() / phone.widthDp() + 2 * ENDS);
    double across = Math.min(LARGEST * phone.widthDp(), Math.min(byWidth, byHeight));
    int screenWidth = (int) Math.max(0, Math.floor(across));
    return across(screenWidth, new Dimension(width, height), lineHeight, phone);
  }

  /** A phone in its true size, in the middle of a width and height. */
  static PhoneFrame of(int width, int height, int lineHeight, TrueSize size) {
    int screenWidth = (int) Math.rint(size.widthPx());
    return across(screenWidth, new Dimension(width, height), lineHeight, size.phone());
  }

  private static PhoneFrame across(int screenWidth, Dimension room, int lineHeight, Phone phone) {
    int screenHeight = (int) Math.rint(screenWidth * phone.heightDp() / phone.widthDp());
    int side = (int) Math.rint(SIDE * screenWidth);
    int ends = (int) Math.rint(ENDS * screenWidth);
    int bodyWidth = screenWidth + 2 * side;
    int bodyHeight = screenHeight + 2 * ends;
    int left = (room.width - bodyWidth) / 2;
    int top = Math.max(lineHeight, (room.height - bodyHeight - 2 * lineHeight) / 2);
    return new PhoneFrame(
        new Rectangle(left, top, bodyWidth, bodyHeight),
        new Rectangle(left + side, top + ends, screenWidth, screenHeight),
        top + bodyHeight + lineHeight + lineHeight / 2);
  }

  /** The room that a phone needs whose screen has a given width. */
  static Dimension preferred(double screenWidth, int lineHeight, Phone phone) {
    double tall = screenWidth * phone.heightDp() / phone.widthDp();
    double width = screenWidth * (1 + 2 * SIDE) + 2 * lineHeight;
    double height = tall + 2 * ENDS * screenWidth + 4 * lineHeight;
    return new Dimension((int) Math.ceil(width), (int) Math.ceil(height));
  }

  boolean isVisible() {
    return screen.width > 0;
  }

  /** Width and height of the ellipse that rounds a corner of the body. */
  double cornerPx() {
    return CORNER * screen.width;
  }
}
