package io.github.readfall.window.canvas;

import static io.github.readfall.window.canvas.OverviewPen.CLEAR;
import static io.github.readfall.window.canvas.OverviewPen.FINE;
import static io.github.readfall.window.canvas.OverviewPen.SOFT;
import static io.github.readfall.window.canvas.OverviewPen.THICK;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.plan.EpisodeOverview;
import io.github.readfall.plan.PartSpan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Paints the number of new words on each screen, and as a dotted line the most allowed. */
record OverviewCurve(
    OverviewPen pen, OverviewFrame frame, EpisodeOverview overview, List<PartSpan> parts) {

  /** Paints the whole curve. */
  void paint() {
    Box area = frame.curve();
    String head = Wording.of("overview.head");
    double left = Math.min(area.x(), frame.widthPx() - pen.widthPx(head));
    pen.write(head, left, area.y() - pen.linePx() / 2);
    overview.curve().stream().filter(step -> step.words() > 0).forEach(this::step);
    pen.down(area.x(), area, pen.colours().edge(), OverviewPen.whole(FINE));
    limit();
    numbers();
  }

  private void step(EpisodeOverview.Step step) {
    double top = frame.y(step.topPx());
    double height = frame.y(step.bottomPx()) - top;
    double gap = Math.min(1, height / 4);
    Box bar = new Box(frame.curve().x(), top, step.words() * frame.wordPx(), height - gap);
    pen.fill(bar, OverviewPen.clear(pen.colours().mark(), SOFT));
    pen.fill(new Box(bar.right() - THICK, top, THICK, bar.height()), pen.colours().mark());
  }

  private void limit() {
    double x = frame.x(overview.mostWords());
    pen.down(
        x,
        frame.curve(),
        OverviewPen.clear(pen.colours().text(), CLEAR),
        OverviewPen.dashed(FINE, 3 * FINE));
    String words = Wording.of("overview.limit", Long.toString(Math.round(overview.mostWords())));
    double left = Math.min(x - pen.widthPx(words) / 2, frame.widthPx() - pen.widthPx(words));
    pen.write(words, left, frame.limitY());
  }

  /** Writes the word counts of screens, the highest first, as far as there is room. */
  private void numbers() {
    List<Double> taken = new ArrayList<>();
    parts.stream().skip(1).forEach(part -> taken.add(frame.y(part.topPx())));
    overview.curve().stream()
        .filter(step -> step.words() > 0)
        .sorted(Comparator.comparingInt(EpisodeOverview.Step::words).reversed())
        .forEach(step -> number(step, taken));
  }

  private void number(EpisodeOverview.Step step, List<Double> taken) {
    double top = frame.y(step.topPx());
    double bottom = frame.y(step.bottomPx());
    double high = pen.linePx() * 3 / 4;
    double middle = (top + bottom) / 2;
    for (double place : List.of(middle, top + high / 2, bottom - high / 2)) {
      if (taken.stream().allMatch(other -> Math.abs(other - place) >= high)) {
        taken.add(place);
        say(step, place);
        return;
      }
    }
  }

  /**
   * Writes the word count of a step, after a triangle, the sign of a warning, if it is too high.
   */
  private void say(EpisodeOverview.Step step, double middle) {
    double left = frame.x(step.words()) + pen.tickPx() / 2;
    if (overview.isWordy(step)) {
      pen.triangle(left, middle);
      left += pen.capsPx() + pen.tickPx() / 2;
    }
    pen.write(Integer.toString(step.words()), left, middle);
  }
}
