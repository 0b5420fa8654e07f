package io.github.readfall.lettering.typeset;

import io.github.readfall.base.geom.Box;
import io.github.readfall.type.balloon.DrawnOutline;
import io.github.readfall.type.balloon.Enclosed;
import io.github.readfall.type.balloon.Enclosure;
import io.github.readfall.type.balloon.Fit;
import io.github.readfall.type.balloon.Fitter;
import io.github.readfall.type.balloon.ShapeKind;
import io.github.readfall.type.balloon.Stack;
import io.github.readfall.type.text.BreakCosts;
import io.github.readfall.type.text.LineBox;
import io.github.readfall.type.text.LineTable;
import io.github.readfall.type.text.TextLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Fits a shaped cue and puts its lines in their places. */
final class BalloonSetter {

  /** Boxes this near are the same: layout.json has hundredths of a pixel, on either side. */
  private static final double SAME_PX = 0.02;

  /** Sums of the same widths in another order differ by far less. */
  private static final double HAIR_PX = 1e-6;

  /** Share by which bumps may be drawn out and look unchanged. House default, no source. */
  private static final double UNSEEN = 0.1;

  /** A cue broken into lines, and the outline they went into. */
  private record Broken(Fit fit, List<TextLine> lines, Stack stack) {

    static Broken of(ShapedCue cue, Fit fit) {
      List<TextLine> lines = new ArrayList<>();
      for (int i = 0; i < fit.lastSegments().size(); i++) {
        lines.add(cue.passage().line(fit.firstSegment(i), fit.lastSegments().get(i)));
      }
      List<LineBox> boxes = lines.stream().map(TextLine::box).toList();
      return new Broken(fit, lines, Stack.of(boxes, cue.rules().leadingPx()));
    }

    Enclosed enclosed() {
      return fit.enclosed();
    }

    /** Returns true if the lines are just as large as they were taken for. */
    boolean isAsMeasured(ShapedCue cue) {
      for (int i = 0; i < lines.size(); i++) {
        LineBox box = lines.get(i).box();
        LineBox measured = cue.table().box(fit.firstSegment(i), fit.lastSegments().get(i));
        boolean same =
            Math.abs(box.width() - measured.width()) < HAIR_PX
                && Math.abs(box.top() - measured.top()) < HAIR_PX
                && Math.abs(box.bottom() - measured.bottom()) < HAIR_PX;
        if (!same) {
          return false;
        }
      }
      return true;
    }

    /** The lines that part what no line may part, but for those that the script ends itself. */
    List<Integer> partedAfter(ShapedCue cue) {
      List<Integer> lasts = fit.lastSegments();
      return IntStream.range(0, lasts.size() - 1)
          .filter(line -> !cue.table().isForced(lasts.get(line)))
          .filter(line -> cue.table().costs().after(lasts.get(line)) >= BreakCosts.NEAR_BAN)
          .boxed()
          .toList();
    }
  }

  SetBalloon set(ShapedCue cue) {
    ShapeKind shape = cue.look().shape();
    Broken broken = Broken.of(cue, fit(cue, cue.enclosure()));
    Enclosed enclosed = broken.isAsMeasured(cue) ? broken.enclosed() : exact(cue, broken);
    DrawnOutline own = DrawnOutline.round(shape, enclosed, cue.outlineStyle());
    return cue.wanted()
        .box()
        .filter(box -> shape != ShapeKind.NONE)
        .map(BalloonSetter::visible)
        .map(box -> into(box, cue, broken, own))
        .orElseGet(() -> placed(cue, broken, own, enclosed.shiftPx(), Optional.empty()));
  }

  private static Enclosed exact(ShapedCue cue, Broken broken) {
    Enclosed exact =
        cue.enclosure().smallest(broken.stack(), cue.rules(), Double.POSITIVE_INFINITY);
    return exact.exists() ? exact : broken.enclosed();
  }

  /** A single letter wider than the strip gets its balloon all the same; that is a finding. */
  private static Fit fit(ShapedCue cue, Enclosure enclosure) {
    return cue.rulesAsked()
        .flatMap(rules -> Fitter.fit(cue.table(), enclosure, rules))
        .or(() -> Fitter.fit(cue.table(), enclosure, cue.rules()))
        .or(() -> Fitter.fit(cue.table(), enclosure, cue.rules().withoutMaxWidth()))
        .orElseThrow(() -> new IllegalStateException("no balloon for " + cue.cue().id()));
  }

  /** A box of at least a pixel: a smaller one has no outline to draw. */
  private static Box visible(Box box) {
    return new Box(box.x(), box.y(), Math.max(1, box.width()), Math.max(1, box.height()));
  }

  /** Sets a cue into a box, by itself if that gives the same box. */
  private static SetBalloon into(Box box, ShapedCue cue, Broken own, DrawnOutline ownOutline) {
    Box ownBox = ownOutline.bounds();
    double change = change(box, ownBox);
    Copyfit copyfit =
        change <= UNSEEN
            ? Copyfit.into(cue, ownOutline.stretchedTo(box.width(), box.height()))
            : Copyfit.into(cue, box.width(), box.height());
    boolean same = change * Math.min(ownBox.width(), ownBox.height()) <= SAME_PX;
    Broken best = same ? own : copyfit.best().map(fit -> Broken.of(cue, fit)).orElse(own);
    if (goesIn(copyfit, best)) {
      return given(copyfit, best, 0, ownBox);
    }
    if (cue.brokenWords().isEmpty()
        && cue.passage().segments().size() < cue.whole().segments().size()) {
      ShapedCue freely = cue.brokenFreely();
      return into(box, freely, Broken.of(freely, fit(freely, freely.enclosure())), ownOutline);
    }
    if (cue.passage().isCentredByEye()) {
      ShapedCue byWidth = cue.centredByWidth();
      return into(box, byWidth, Broken.of(byWidth, own.fit()), ownOutline);
    }
    LineTable lines = copyfit.linesAt(Math.min(1, scale(copyfit, best)));
    Broken largest = copyfit.largest(lines).map(fit -> Broken.of(cue, fit)).orElse(best);
    int tooMany = goesIn(copyfit, largest) ? 0 : copyfit.lettersTooMany(lines, 1);
    return given(copyfit, largest, tooMany, ownBox);
  }

  /** The change of a box's width or height against another's, as a share. */
  private static double change(Box box, Box ownBox) {
    return Math.max(
        Math.abs(box.width() / ownBox.width() - 1), Math.abs(box.height() / ownBox.height() - 1));
  }

  private static double scale(Copyfit copyfit, Broken broken) {
    return copyfit.scale(copyfit.smallest(broken.stack()));
  }

  /** Returns true if lines keep their margin, within a hair. */
  private static boolean goesIn(Copyfit copyfit, Broken text) {
    double marginPx = copyfit.cue().rules().marginPx();
    return copyfit.clearPx(copyfit.smallest(text.stack()), text.stack()) >= marginPx - SAME_PX;
  }

  private static SetBalloon given(Copyfit copyfit, Broken text, int tooMany, Box ownBox) {
    Enclosed smallest = copyfit.smallest(text.stack());
    GivenFit fit =
        new GivenFit(
            copyfit.scale(smallest),
            copyfit.clearPx(smallest, text.stack()),
            tooMany,
            new Box(0, 0, ownBox.width(), ownBox.height()));
    return placed(copyfit.cue(), text, copyfit.drawn(), smallest.shiftPx(), Optional.of(fit));
  }

  private static SetBalloon placed(
      ShapedCue cue, Broken text, DrawnOutline drawn, double shiftPx, Optional<GivenFit> given) {
    Box bounds = drawn.bounds();
    double middleX = -bounds.x();
    double middleY = -bounds.y();
    return new SetBalloon(
        cue.cue(),
        cue.look(),
        cue.language(),
        cue.type(),
        cue.capitals(),
        cue.rules().leadingPx(),
        cue.outlineStyle(),
        cue.trackingPx(),
        lines(text, cue.rules().leadingPx(), middleX, middleY - shiftPx),
        bounds.movedBy(middleX, middleY),
        drawn.inner().movedBy(middleX, middleY),
        drawn.outline().movedBy(middleX, middleY),
        cue.joinedTo(),
        text.partedAfter(cue),
        cue.alone(),
        cue.passage().missingLetters(),
        cue.brokenWords(),
        cue.wanted(),
        given);
  }

  /** Centres each line's box on the outline's middle. */
  private static List<SetLine> lines(
      Broken text, double leadingPx, double middleX, double middleY) {
    List<SetLine> placed = new ArrayList<>();
    for (int i = 0; i < text.lines().size(); i++) {
      LineBox box = text.lines().get(i).box();
      double x = middleX - box.width() / 2 - box.left();
      double baseline = middleY + text.stack().firstBaselinePx() + i * leadingPx;
      placed.add(new SetLine(text.lines().get(i), x, baseline));
    }
    return placed;
  }
}
