package io.github.readfall.window.plan;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.plan.EpisodePlan;
import io.github.readfall.window.parts.ReadingTime;
import java.util.Locale;

/** What an episode comes to, in words. */
final class EpisodeFigures {

  private EpisodeFigures() {}

  /** Its height, in strip pixels. */
  static String height(double px) {
    return Wording.of("plan.height", Long.toString(Math.round(px)));
  }

  /** Its height in screens of the narrowest phone. */
  static String screens(double count) {
    return Wording.of("plan.screens", tenths(count));
  }

  /** A number with one place behind the point. */
  static String tenths(double number) {
    return String.format(Locale.ROOT, "%.1f", number);
  }

  /** All of it, in one sentence. */
  static String sentence(EpisodePlan plan) {
    return Wording.of(
        "plan.figures",
        whole(height(plan.heightPx())),
        whole(screens(plan.screens().count())),
        whole(Wording.of("plan.words", plan.words())),
        whole(Wording.of("plan.time", ReadingTime.of(plan.seconds()))));
  }

  /** No line is broken in it. */
  private static String whole(String words) {
    return words.replace(' ', '\u00a0');
  }
}
