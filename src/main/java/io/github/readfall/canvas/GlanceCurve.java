package io.github.readfall.canvas;

import static io.github.readfall.canvas.GlanceInk.CLEAR;
import static io.github.readfall.canvas.GlanceInk.FINE;
import static io.github.readfall.canvas.GlanceInk.SOFT;
import static io.github.readfall.canvas.GlanceInk.THICK;

import io.github.readfall.geom.Box;
import io.github.readfall.plan.EpisodeGlance;
import io.github.readfall.plan.PartSpan;
import io.github.readfall.wording.Wording;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Paints how many words each screen brings, and, dotted, how many it may. */
record GlanceCurve(GlanceInk ink, GlanceFrame frame, EpisodeGlance glance, List<PartSpan> parts) {

  /** Paints all of it. */
  void paint() {
    Box area = frame.curve();
    String head = Wording.of("glance.head");
    double left = Math.min(area.x(), frame.widthPx() - ink.widthPx(head));
    ink.write(head, left, area.y() - ink.linePx() / 2);
    glance.curve().stream().filter(step -> step.words() > 0).forEach(this::step);
    ink.down(area.x(), area, ink.look().edge(), GlanceInk.whole(FINE));
    limit();
    numbers();
  }

  private void step(EpisodeGlance.Step step) {
    double top = frame.y(step.topPx());
    double height = frame.y(step.bottomPx()) - top;
    double gap = Math.min(1, height / 4);
    Box bar = new Box(frame.curve().x(), top, step.words() * frame.wordPx(), height - gap);
    ink.fill(bar, GlanceInk.clear(ink.look().mark(), SOFT));
    ink.fill(new Box(bar.right() - THICK, top, THICK, bar.height()), ink.look().mark());
  }

  private void limit() {
    double x = frame.x(glance.mostWords());
    ink.down(
        x,
        frame.curve(),
        GlanceInk.clear(ink.look().text(), CLEAR),
        GlanceInk.dashed(FINE, 3 * FINE));
    String words = Wording.of("glance.limit", Long.toString(Math.round(glance.mostWords())));
    double left = Math.min(x - ink.widthPx(words) / 2, frame.widthPx() - ink.widthPx(words));
    ink.write(words, left, frame.limitY());
  }

  /** Says the words of screens, from the fullest down, where there is room. */
  private void numbers() {
    List<Double> taken = new ArrayList<>();
    parts.stream().skip(1).forEach(part -> taken.add(frame.y(part.topPx())));
    glance.curve().stream()
        .filter(step -> step.words() > 0)
        .sorted(Comparator.comparingInt(EpisodeGlance.Step::words).reversed())
        .forEach(step -> number(step, taken));
  }

  private void number(EpisodeGlance.Step step, List<Double> taken) {
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
  private void say(EpisodeGlance.Step step, double middle) {
    double left = frame.x(step.words()) + ink.tickPx() / 2;
    if (glance.isWordy(step)) {
      ink.triangle(left, middle);
      left += ink.capsPx() + ink.tickPx() / 2;
    }
    ink.write(Integer.toString(step.words()), left, middle);
  }
}
