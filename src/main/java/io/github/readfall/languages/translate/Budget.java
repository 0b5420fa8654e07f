package io.github.readfall.languages.translate;

/**
 * How many characters of a language go into one balloon at reading size, in code points.
 *
 * @param comfortable so many go in nearly always; positive
 * @param most so many have gone in with luck in the words; not less than {@code comfortable}
 */
public record Budget(int comfortable, int most) {

  public Budget {
    if (comfortable <= 0 || most < comfortable) {
      throw new IllegalArgumentException("impossible budget");
    }
  }
}
