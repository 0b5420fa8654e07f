package io.github.readfall.rules.words;

import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.rules.model.RuleSpec;

/** The limits of words. */
public final class WordLimits {

  private WordLimits() {}

  /** The most new words for a screen of the phone. */
  public static double onScreen(HouseStyle style) {
    return RuleSpec.SCREEN.limitIn(style);
  }
}
