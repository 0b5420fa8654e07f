package io.github.readfall.languages.reference;

import java.util.Optional;

/**
 * Lengths by the reference texts: likely is the ratio of the whole texts; least and most are the
 * tenth and the ninetieth percentile of the articles' ratios.
 *
 * <p>A text shorter than the median article spreads more: by the square root of how much shorter it
 * is, like the mean of fewer words chosen independently.
 *
 * @param ratio of the target language over the source
 */
public record MeasuredLength(Ratio ratio) implements ExpectedLength {

  private static final int LOW = 10;
  private static final int HIGH = 90;

  @Override
  public Expectation of(int sourceCharacters) {
    double wider =
        StrictMath.sqrt(Math.max(1, ratio.articleCharacters() / (double) sourceCharacters));
    double middle = ratio.codePoints();
    double low = middle + Math.min(0, ratio.percentile(LOW) - middle) * wider;
    double high = middle + Math.max(0, ratio.percentile(HIGH) - middle) * wider;
    int likely = rounded(middle * sourceCharacters);
    return new Expectation(
        Math.min(likely, rounded(low * sourceCharacters)),
        likely,
        Math.max(likely, rounded(high * sourceCharacters)));
  }

  private static int rounded(double characters) {
    return (int) Math.max(1, Math.round(characters));
  }

  @Override
  public Optional<String> caution() {
    return Optional.empty();
  }
}
