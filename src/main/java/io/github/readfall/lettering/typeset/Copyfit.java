package io.github.readfall.lettering.typeset;

import io.github.readfall.type.balloon.DrawnOutline;
import io.github.readfall.type.balloon.Enclosed;
import io.github.readfall.type.balloon.Fit;
import io.github.readfall.type.balloon.FitRules;
import io.github.readfall.type.balloon.Fitter;
import io.github.readfall.type.balloon.Stack;
import io.github.readfall.type.text.LineTable;
import java.util.Optional;

/**
 * Finds the breaks with which a cue fits a given outline.
 *
 * <p>Everything about a balloon grows with its type, the margin too; so the largest size follows
 * from the smallest outline of the same aspect at the size the cue is shaped at.
 *
 * @param cue shaped
 * @param drawn the outline
 * @param rules the cue's, at that outline's aspect and for a strip of any width
 */
record Copyfit(ShapedCue cue, DrawnOutline drawn, FitRules rules) {

  /** Outlines this much too small hold their text all the same: see {@link BalloonSetter}. */
  private static final double HAIR_PX = 0.01;

  static Copyfit into(ShapedCue cue, double widthPx, double heightPx) {
    return into(
        cue, DrawnOutline.filling(cue.look().shape(), widthPx, heightPx, cue.outlineStyle()));
  }

  static Copyfit into(ShapedCue cue, DrawnOutline drawn) {
    double aspect = drawn.halfWidthPx() / drawn.halfHeightPx();
    return new Copyfit(cue, drawn, cue.rules().withAspect(aspect).withoutMaxWidth());
  }

  /** Every line that could be of use at some share of the cue's size. */
  LineTable linesAt(double leastScale) {
    return cue.passage().measure(2 * drawn.halfWidthPx() / leastScale);
  }

  /** The breaks of least cost that fit the outline, however much larger it is than they need. */
  Optional<Fit> best() {
    double width = drawn.halfWidthPx() + HAIR_PX;
    double height = drawn.halfHeightPx() + HAIR_PX;
    double areaPx2 = cue.enclosure().areaPx2(width, height);
    FitRules asked = rules.withLines(cue.wanted().lines().orElse(0));
    return Fitter.fitInto(cue.table(), cue.enclosure(), asked, areaPx2)
        .or(() -> Fitter.fitInto(cue.table(), cue.enclosure(), rules, areaPx2));
  }

  /** The breaks with which the largest type fits, however they look. */
  Optional<Fit> largest(LineTable lines) {
    return Fitter.fit(lines, cue.enclosure(), rules.withoutCosts());
  }

  /** The smallest outline of this aspect round a stack. */
  Enclosed smallest(Stack stack) {
    return cue.enclosure().smallest(stack, rules, Double.POSITIVE_INFINITY);
  }

  /** The largest size at which the content of an outline fits, over the cue's size. */
  double scale(Enclosed smallest) {
    return drawn.halfWidthPx() / smallest.halfWidthPx();
  }

  /**
   * The distance of a stack from the outline, centred as in the smallest; negative if it leaves it.
   */
  double clearPx(Enclosed smallest, Stack stack) {
    Enclosed given = new Enclosed(drawn.halfWidthPx(), drawn.halfHeightPx(), smallest.shiftPx(), 0);
    return cue.enclosure().insidePx(given, cue.rules().marginPx(), stack);
  }

  /**
   * The number of letters too many at the end: halves the text until the longest beginning is
   * found.
   */
  int lettersTooMany(LineTable lines, double leastScale) {
    int goesIn = 0;
    int tooMany = lines.size();
    while (tooMany - goesIn > 1) {
      int middle = (goesIn + tooMany) / 2;
      boolean goes =
          largest(lines.firstSegments(middle))
              .filter(fit -> scale(fit.enclosed()) >= leastScale)
              .isPresent();
      goesIn = goes ? middle : goesIn;
      tooMany = goes ? tooMany : middle;
    }
    String text = cue.passage().text();
    int kept = goesIn == 0 ? 0 : cue.passage().segments().get(goesIn - 1).end();
    return text.codePointCount(kept, text.length());
  }
}
