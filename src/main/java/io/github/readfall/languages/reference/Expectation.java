package io.github.readfall.languages.reference;

/**
 * The expected length of a translation, in code points.
 *
 * @param least shorter is unlikely; positive
 * @param likely to plan with
 * @param most longer is unlikely
 */
public record Expectation(int least, int likely, int most) {

  public Expectation {
    if (least < 1 || likely < least || most < likely) {
      throw new IllegalArgumentException("impossible lengths");
    }
  }
}
