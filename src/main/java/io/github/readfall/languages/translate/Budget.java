package io.github.readfall.languages.translate;

/**
 * The number of characters of a language that fit one balloon at reading size, in code points.
 *
 * @param comfortable fits nearly always; positive
 * @param most fits with luck in the words; not less than {@code comfortable}
 */
public record Budget(int comfortable, int most) {

  public Budget {
    if (comfortable <= 0 || most < comfortable) {
      throw new IllegalArgumentException("impossible budget");
    }
  }
}
