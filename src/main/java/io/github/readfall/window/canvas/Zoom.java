package io.github.readfall.window.canvas;

/** The size at which a strip is shown. */
public sealed interface Zoom {

  /** The smallest and the largest scale of a strip, in pixels of the surface to a strip pixel. */
  double LEAST = 0.02;

  double MOST = 8;

  /**
   * The scale on a surface.
   *
   * @param room available on the surface
   * @return user-interface pixels to one strip pixel, within {@link #LEAST} and {@link #MOST}
   */
  double scale(Room room);

  /**
   * The surface that a strip is shown on.
   *
   * @param widthPx room for the strip, in user-interface pixels
   * @param stripWidthPx of the strip; positive
   * @param devicePerPx device pixels to one user-interface pixel; positive
   */
  record Room(double widthPx, double stripWidthPx, double devicePerPx) {}

  private static double within(double scale) {
    return Math.max(LEAST, Math.min(MOST, scale));
  }

  /** As wide as the surface. */
  record FitWidth() implements Zoom {
    @Override
    public double scale(Room room) {
      return within(room.widthPx() / room.stripWidthPx());
    }
  }

  /** One strip pixel to one pixel of the device. */
  record ActualPixels() implements Zoom {
    @Override
    public double scale(Room room) {
      return within(1 / room.devicePerPx());
    }
  }

  /**
   * As wide as on a phone, a density-independent pixel of which is one user-interface pixel here.
   *
   * @param widthDp of the phone's screen; positive
   */
  record PhoneSize(double widthDp) implements Zoom {
    @Override
    public double scale(Room room) {
      return within(widthDp / room.stripWidthPx());
    }
  }

  /**
   * A factor.
   *
   * @param pxPerStripPx user-interface pixels to one strip pixel; positive
   */
  record Factor(double pxPerStripPx) implements Zoom {
    @Override
    public double scale(Room room) {
      return within(pxPerStripPx);
    }
  }
}
