package io.github.readfall;

import io.github.readfall.type.text.Language;
import io.github.readfall.type.text.Languages;
import java.util.List;
import java.util.stream.Stream;

/**
 * How much of a long test to run: a short form in every build, all of it under {@code -Pendurance}.
 */
public final class Endurance {

  private Endurance() {}

  /** True under {@code -Pendurance}. */
  public static boolean isLong() {
    return Boolean.getBoolean("readfall.endurance");
  }

  /** The number of rounds of a random walk or a loop of kills. */
  public static int rounds(int inEveryBuild, int underEndurance) {
    return isLong() ? underEndurance : inEveryBuild;
  }

  /**
   * All languages under {@code -Pendurance}, else one for each way of setting text: letters that
   * join, from the right; words with capitals; marks around letters; syllables between spaces;
   * words without spaces; signs without words.
   */
  public static List<Language> languages() {
    return isLong()
        ? Languages.all()
        : Stream.of("ar", "de", "hi", "ko", "th", "zh-Hant").map(Languages::of).toList();
  }
}
