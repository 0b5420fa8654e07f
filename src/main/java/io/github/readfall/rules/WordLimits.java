package io.github.readfall.rules;

import io.github.readfall.lettering.style.HouseStyle;

/** How many words are too many. */
public final class WordLimits {

  static final String SCREEN = "words/screen";

  /**
   * 60 words a page: Gertler and Lieber, The Complete Idiot's Guide to Creating a Graphic Novel, as
   * told on wyliecomm.com. A page and a phone screen are not the same.
   */
  private static final double MOST_ON_SCREEN = 60;

  private WordLimits() {}

  /** The most new words that a screen of the phone may bring. */
  public static double onScreen(HouseStyle style) {
    return style.limit(SCREEN, MOST_ON_SCREEN);
  }
}
