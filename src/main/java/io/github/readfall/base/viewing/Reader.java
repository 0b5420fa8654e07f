package io.github.readfall.base.viewing;

import java.util.List;

/**
 * A reader who holds a phone.
 *
 * @param name shown to people
 * @param distanceMm from eye to screen, in millimetres; positive
 */
public record Reader(String name, double distanceMm) {

  /** Deep in a story: 29.2 cm over an hour of a novel (Long et al. 2017, Clin. Exp. Optom. 100). */
  public static final Reader NEAR = new Reader("near", 292);

  /** 36.2 cm, own text messages (Bababekova et al. 2011, Optometry and Vision Science 88(7)). */
  public static final Reader USUAL = new Reader("usual", 362);

  /** 39.0 cm, presbyopes (Boccardo 2021, Journal of Optometry 14(2):120-126). */
  public static final Reader OLDER = new Reader("older", 390);

  /** All readers, from the nearest to the farthest. */
  public static final List<Reader> ALL = List.of(NEAR, USUAL, OLDER);

  /**
   * Widths that phones have, in dp: viewports in the device list of the browser-testing library
   * Playwright (deviceDescriptorsSource.json); 430 from memory.
   */
  public static final List<Double> PHONE_WIDTHS_DP =
      List.of(360.0, 375.0, 390.0, 393.0, 412.0, 414.0, 428.0, 430.0);

  /** A phone in this reader's hand; of a phone's height no audit asks. */
  public Phone holding(double widthDp) {
    return new Phone(name, widthDp, widthDp * 16 / 9, distanceMm);
  }
}
