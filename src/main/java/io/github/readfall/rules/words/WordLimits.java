package io.github.readfall.rules.words;

import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.rules.model.RuleSpec;

/** How many words are too many. */
public final class WordLimits {

  private WordLimits() {}

  /** The most new words that a screen of the phone may bring. */
  public static double onScreen(HouseStyle style) {
    return RuleSpec.SCREEN.limitIn(style);
  }
}
