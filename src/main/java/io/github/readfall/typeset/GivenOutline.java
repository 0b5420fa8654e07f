package io.github.readfall.typeset;

import io.github.readfall.balloon.Fit;
import io.github.readfall.balloon.FitRules;
import io.github.readfall.balloon.Fitter;
import io.github.readfall.text.LineTable;
import java.util.Optional;

/**
 * How a cue goes into an outline that is already there.
 *
 * <p>Everything about a balloon grows with its type, the margin too; so the largest size follows
 * from the smallest outline of the same aspect at reading size.
 *
 * @param scale the largest size at which the text goes in with its margin, over reading size
 * @param fontPx the same as an em
 * @param fits whether that is no less than the least size asked for
 * @param growBy by how much the outline's width and height must grow for the least size; 1 where it
 *     fits
 * @param lettersTooMany how many letters must go from the end for the least size; 0 where it fits
 */
public record GivenOutline(
    double scale, double fontPx, boolean fits, double growBy, int lettersTooMany) {

  /** Sizes below this share of reading size are not looked for: no phone shows them. */
  private static final double SMALLEST = 1.0 / 16;

  /**
   * Fits a cue into an outline of its own shape.
   *
   * @param widthPx of the drawn outline; positive
   * @param heightPx of the drawn outline; positive
   * @param leastScale the least size that will do, over reading size
   */
  public static GivenOutline of(ShapedCue cue, double widthPx, double heightPx, double leastScale) {
    double reach = cue.look().shape().reachPx(cue.rules().marginPx());
    double innerWidth = Math.max(1, widthPx - 2 * reach);
    double innerHeight = Math.max(1, heightPx - 2 * reach);
    FitRules rules =
        cue.rules().withAspect(innerWidth / innerHeight).withoutMaxWidth().withoutCosts();
    LineTable table = cue.passage().measure(innerWidth / SMALLEST);
    double scale = scale(cue, table, rules, innerWidth).orElse(SMALLEST);
    boolean fits = scale >= leastScale;
    return new GivenOutline(
        scale,
        scale * cue.type().fontPx(),
        fits,
        fits ? 1 : leastScale / scale,
        fits ? 0 : lettersTooMany(cue, table, rules, innerWidth, leastScale));
  }

  private static Optional<Double> scale(
      ShapedCue cue, LineTable table, FitRules rules, double innerWidth) {
    Optional<Fit> fit = Fitter.fit(table, cue.look().shape().enclosure(), rules);
    return fit.map(f -> innerWidth / (2 * f.enclosed().halfWidthPx()));
  }

  /** Halves the text until the longest beginning is found that goes in. */
  private static int lettersTooMany(
      ShapedCue cue, LineTable table, FitRules rules, double innerWidth, double leastScale) {
    int goesIn = 0;
    int tooMany = table.size();
    while (tooMany - goesIn > 1) {
      int middle = (goesIn + tooMany) / 2;
      Optional<Double> scale = scale(cue, table.beginning(middle), rules, innerWidth);
      if (scale.isPresent() && scale.get() >= leastScale) {
        goesIn = middle;
      } else {
        tooMany = middle;
      }
    }
    String text = cue.passage().text();
    int kept = goesIn == 0 ? 0 : cue.passage().segments().get(goesIn - 1).end();
    return text.codePointCount(kept, text.length());
  }
}
