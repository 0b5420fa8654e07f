package io.github.readfall.plan;

import io.github.readfall.base.viewing.Phone;
import io.github.readfall.lettering.style.HouseStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A strip as the narrowest phone of the series shows it, screen after screen.
 *
 * @param screenPx height of one screen, in strip pixels; positive
 * @param count height of the strip in screens; mostly not a whole number
 * @param screens from the top, the last one mostly not full
 */
public record Screens(double screenPx, double count, List<Screen> screens) {

  /**
   * One screen and the words first seen on it: words count on the screen on which their balloon's
   * middle first comes into view.
   *
   * @param number from 1
   * @param topPx where it begins, in strip pixels
   * @param words first seen on it
   * @param seconds needed to read them
   */
  public record Screen(int number, double topPx, int words, double seconds) {}

  public Screens {
    screens = List.copyOf(screens);
  }

  /** The height of one screen in strip pixels, with the strip as wide as the phone. */
  public static double screenPx(HouseStyle style) {
    Phone phone = style.narrowestPhone();
    return phone.heightDp() * style.strip().widthPx() / phone.widthDp();
  }

  /** The screen, from 0, on which a height comes into view. */
  public static int index(double middlePx, double screenPx) {
    return (int) Math.max(0, Math.floor(middlePx / screenPx));
  }

  /** The screens of a strip with words on it. */
  public static Screens of(double heightPx, double screenPx, List<ReadWords> words) {
    int last = (int) Math.ceil(heightPx / screenPx) - 1;
    List<List<ReadWords>> met = new ArrayList<>();
    for (int i = 0; i <= last; i++) {
      met.add(new ArrayList<>());
    }
    for (ReadWords some : words) {
      met.get(Math.min(last, index(some.middlePx(), screenPx))).add(some);
    }
    return new Screens(
        screenPx,
        heightPx / screenPx,
        IntStream.rangeClosed(0, last).mapToObj(i -> screen(i, screenPx, met.get(i))).toList());
  }

  private static Screen screen(int index, double screenPx, List<ReadWords> met) {
    return new Screen(
        index + 1,
        index * screenPx,
        met.stream().mapToInt(ReadWords::words).sum(),
        met.stream().mapToDouble(ReadWords::seconds).sum());
  }
}
