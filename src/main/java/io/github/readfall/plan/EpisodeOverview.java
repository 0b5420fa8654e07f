package io.github.readfall.plan;

import io.github.readfall.base.geom.Box;
import io.github.readfall.strip.Cuts;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * An overview of an episode: its whole strip, and beside it how much is read where. Lengths are
 * strip pixels.
 *
 * @param strip its bounds
 * @param panels their boxes, in script order
 * @param balloons their boxes, in script order
 * @param cuts into canvas pages and slices
 * @param curve the words on each screen, from the top; together as many as in the plan
 * @param mostWords limit above which a screen counts as wordy
 * @param tallestPx greatest height that the publisher accepts
 */
public record EpisodeOverview(
    Box strip,
    List<Box> panels,
    List<Box> balloons,
    Cuts cuts,
    List<Step> curve,
    double mostWords,
    double tallestPx) {

  /**
   * A step of the curve, as long as the screen is on the strip.
   *
   * @param screen its number, from 1
   * @param topPx where it begins
   * @param bottomPx where it or the strip ends
   * @param words first seen on it
   * @param seconds needed to read them
   */
  public record Step(int screen, double topPx, double bottomPx, int words, double seconds) {}

  public EpisodeOverview {
    panels = List.copyOf(panels);
    balloons = List.copyOf(balloons);
    curve = List.copyOf(curve);
  }

  /**
   * The overview of a strip and its plan.
   *
   * @param mostWords limit of words on a screen
   */
  public static EpisodeOverview of(Galley galley, EpisodePlan plan, double mostWords) {
    return new EpisodeOverview(
        new Box(0, 0, galley.widthPx(), plan.heightPx()),
        galley.panels().stream().map(PanelBox::box).toList(),
        galley.balloons().stream().map(PlacedBalloon::box).toList(),
        galley.cuts(),
        curve(plan),
        mostWords,
        EpisodeLimit.px(galley.style(), galley.widthPx()));
  }

  private static List<Step> curve(EpisodePlan plan) {
    double screenPx = plan.screens().screenPx();
    return plan.screens().screens().stream()
        .map(
            screen ->
                new Step(
                    screen.number(),
                    screen.topPx(),
                    Math.min(screen.topPx() + screenPx, plan.heightPx()),
                    screen.words(),
                    screen.seconds()))
        .toList();
  }

  /** The screen with the most words, the upper of equals; empty if there is none. */
  public Optional<Step> fullest() {
    return curve.stream()
        .filter(step -> step.words() > 0)
        .max(
            Comparator.comparingInt(Step::words)
                .thenComparing(Comparator.comparingInt(Step::screen).reversed()));
  }

  /** The step at a height. */
  public Optional<Step> at(double yPx) {
    return curve.stream().filter(step -> yPx >= step.topPx() && yPx < step.bottomPx()).findFirst();
  }

  /** Returns true if a screen has too many words. */
  public boolean isWordy(Step step) {
    return step.words() > mostWords;
  }

  /** Returns true if the strip is taller than the publisher accepts. */
  public boolean isTooTall() {
    return strip.height() > tallestPx;
  }
}
