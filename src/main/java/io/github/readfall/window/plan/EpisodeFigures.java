package io.github.readfall.window.plan;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.plan.EpisodePlan;
import io.github.readfall.plan.ReadingTime;
import java.util.Locale;

/** The figures of an episode, in words. */
final class EpisodeFigures {

  private EpisodeFigures() {}

  /** Height, in strip pixels. */
  static String height(double px) {
    return Wording.of("plan.height", Long.toString(Math.round(px)));
  }

  /** Height, in screens of the narrowest phone. */
  static String screens(double count) {
    return Wording.of("plan.screens", tenths(count));
  }

  /** A number with one decimal place. */
  static String tenths(double number) {
    return String.format(Locale.ROOT, "%.1f", number);
  }

  /** All figures, in one sentence. */
  static String sentence(EpisodePlan plan) {
    return Wording.of(
        "plan.figures",
        whole(height(plan.heightPx())),
        whole(screens(plan.screens().count())),
        whole(Wording.of("plan.words", plan.words())),
        whole(Wording.of("plan.time", ReadingTime.of(plan.seconds()))));
  }

  /** The words without a line break. */
  private static String whole(String words) {
    return words.replace(' ', '\u00a0');
  }
}
