package io.github.readfall.base.viewing;

/**
 * A phone on a screen, as large as in the hand. A dp is nominal, so a real phone differs by some
 * per cent.
 *
 * <p>Worked example: a phone of 360 dp is 360 × 25.4 / 160 = 57.15 mm wide, 216 pixels at 96 to the
 * inch.
 *
 * @param phone that is shown
 * @param scale of the screen that shows it
 */
public record TrueSize(Phone phone, ScreenScale scale) {

  /** Distance of a screen from the eye: an arm's length, 28 inches (W3C, CSS Values and Units). */
  public static final double ARM_MM = 28 * 25.4;

  /** Width of the phone's screen in millimetres, nominal. */
  public double widthMm() {
    return phone.widthDp() * Phone.DP_MM;
  }

  /** Width of the phone's screen, in pixels. */
  public double widthPx() {
    return scale.px(widthMm());
  }

  /**
   * Its visual angle at an arm's length, as a share of its angle to its reader.
   *
   * <p>Worked example: 57.15 mm from 711.2 mm and not from 362 mm, 4.60 and not 9.03 degrees, are
   * 0.51.
   */
  public double shareFromAnArmsLength() {
    return VisualAngle.of(widthMm(), ARM_MM).arcmin()
        / VisualAngle.of(widthMm(), phone.distanceMm()).arcmin();
  }
}
