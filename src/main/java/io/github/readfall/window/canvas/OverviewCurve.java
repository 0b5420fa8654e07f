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

/** Paints how many words each screen brings, and, dotted, how many it may. */
record OverviewCurve(
    OverviewPen ink, OverviewFrame frame, EpisodeOverview glance, List<PartSpan> parts) {

  /** Paints all of it. */
  void paint() {
    Box area = frame.curve();
    String head = Wording.of("overview.head");
    double left = Math.min(area.x(), frame.widthPx() - ink.widthPx(head));
    ink.write(head, left, area.y() - ink.linePx() / 2);
    glance.curve().stream().filter(step -> step.words() > 0).forEach(this::step);
    ink.down(area.x(), area, ink.look().edge(), OverviewPen.whole(FINE));
    limit();
    numbers();
  }

  private void step(EpisodeOverview.Step step) {
    double top = frame.y(step.topPx());
    double height = frame.y(step.bottomPx()) - top;
    double gap = Math.min(1, height / 4);
    Box bar = new Box(frame.curve().x(), top, step.words() * frame.wordPx(), height - gap);
    ink.fill(bar, OverviewPen.clear(ink.look().mark(), SOFT));
    ink.fill(new Box(bar.right() - THICK, top, THICK, bar.height()), ink.look().mark());
  }

  private void limit() {
    double x = frame.x(glance.mostWords());
    ink.down(
        x,
        frame.curve(),
        OverviewPen.clear(ink.look().text(), CLEAR),
        OverviewPen.dashed(FINE, 3 * FINE));
    String words = Wording.of("overview.limit", Long.toString(Math.round(glance.mostWords())));
    double left = Math.min(x - ink.widthPx(words) / 2, frame.widthPx() - ink.widthPx(words));
    ink.write(words, left, frame.limitY());
  }

  /** Says the words of screens, from the fullest down, where there is room. */
  private void numbers() {
    List<Double> taken = new ArrayList<>();
    parts.stream().skip(1).forEach(part -> taken.add(frame.y(part.topPx())));
    glance.curve().stream()
        .filter(step -> step.words() > 0)
        .sorted(Comparator.comparingInt(EpisodeOverview.Step::words).reversed())
        .forEach(step -> number(step, taken));
  }

  private void number(EpisodeOverview.Step step, List<Double> taken) {
    double top = frame.y(step.topPx());
    double bottom = frame.y(step.bottomPx());
    double high = ink.linePx() * 3 / 4;
    double middle = (top + bottom) / 2;
    for (double place : List.of(middle, top + high / 2, bottom - high / 2)) {
      if (taken.stream().allMatch(other -> Math.abs(other - place) >= high)) {
        taken.add(place);
        say(step, place);
        return;
      }
    }
  }

  /** Says how many words it has, behind a triangle, the sign of a warning, where those are many. */
  private void say(EpisodeOverview.Step step, double middle) {
    double left = frame.x(step.words()) + ink.tickPx() / 2;
    if (glance.isWordy(step)) {
      ink.triangle(left, middle);
      left += ink.capsPx() + ink.tickPx() / 2;
    }
    ink.write(Integer.toString(step.words()), left, middle);
  }
}
