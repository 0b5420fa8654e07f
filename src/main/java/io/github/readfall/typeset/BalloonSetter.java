package io.github.readfall.typeset;

import io.github.readfall.balloon.Enclosed;
import io.github.readfall.balloon.Enclosure;
import io.github.readfall.balloon.Fit;
import io.github.readfall.balloon.Fitter;
import io.github.readfall.balloon.ShapeKind;
import io.github.readfall.balloon.Stack;
import io.github.readfall.geom.Box;
import io.github.readfall.geom.Path;
import io.github.readfall.text.LineBox;
import io.github.readfall.text.TextLine;
import java.util.ArrayList;
import java.util.List;

/** Fits a shaped cue and puts its lines in their places. */
final class BalloonSetter {

  SetBalloon set(ShapedCue cue) {
    ShapeKind shape = cue.look().shape();
    Fit fit = fit(cue, shape.enclosure());
    List<TextLine> lines = lines(cue, fit);
    Stack stack = Stack.of(lines.stream().map(TextLine::box).toList(), cue.rules().leadingPx());
    Enclosed exact = shape.enclosure().smallest(stack, cue.rules(), Double.POSITIVE_INFINITY);
    Enclosed enclosed = exact.exists() ? exact : fit.enclosed();
    Path centred = shape.outline(enclosed, cue.rules().marginPx());
    Box bounds = bounds(centred, enclosed);
    double middleX = -bounds.x();
    double middleY = -bounds.y();
    return new SetBalloon(
        cue.cue(),
        cue.look(),
        cue.language(),
        cue.type(),
        cue.capitals(),
        cue.rules().leadingPx(),
        cue.rules().marginPx(),
        cue.trackingPx(),
        placed(lines, stack, cue.rules().leadingPx(), middleX, middleY - enclosed.shiftPx()),
        bounds.movedBy(middleX, middleY),
        inner(enclosed).movedBy(middleX, middleY),
        centred.movedBy(middleX, middleY),
        cue.joinedTo(),
        cue.passage().missingLetters(),
        cue.brokenWords());
  }

  /** A single letter wider than the strip gets its balloon all the same; that is a finding. */
  private static Fit fit(ShapedCue cue, Enclosure enclosure) {
    return Fitter.fit(cue.table(), enclosure, cue.rules())
        .or(() -> Fitter.fit(cue.table(), enclosure, cue.rules().withoutMaxWidth()))
        .orElseThrow(() -> new IllegalStateException("no balloon for " + cue.cue().id()));
  }

  private static List<TextLine> lines(ShapedCue cue, Fit fit) {
    List<TextLine> lines = new ArrayList<>();
    for (int i = 0; i < fit.lastSegments().size(); i++) {
      lines.add(cue.passage().line(fit.firstSegment(i), fit.lastSegments().get(i)));
    }
    return lines;
  }

  private static Box bounds(Path outline, Enclosed enclosed) {
    return outline.steps().isEmpty() ? inner(enclosed) : outline.bounds();
  }

  private static Box inner(Enclosed enclosed) {
    double a = enclosed.halfWidthPx();
    double b = enclosed.halfHeightPx();
    return new Box(-a, -b, 2 * a, 2 * b);
  }

  /** Centres each line's box on the outline's middle. */
  private static List<SetLine> placed(
      List<TextLine> lines, Stack stack, double leadingPx, double middleX, double middleY) {
    List<SetLine> placed = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      LineBox box = lines.get(i).box();
      double x = middleX - box.width() / 2 - box.left();
      double baseline = middleY + stack.firstBaselinePx() + i * leadingPx;
      placed.add(new SetLine(lines.get(i), x, baseline));
    }
    return placed;
  }
}
