package io.github.readfall.languages.reference;

/**
 * How long a translation is likely to be, in code points.
 *
 * @param least shorter is unlikely; positive
 * @param likely to be reckoned with
 * @param most longer is unlikely
 */
public record Expectation(int least, int likely, int most) {

  public Expectation {
    if (least < 1 || likely < least || most < likely) {
      throw new IllegalArgumentException("impossible lengths");
    }
  }
}
