package io.github.readfall.rules.words;

import io.github.readfall.rules.model.Rule;
import java.util.List;

/** Lists the rules about words: how many there are, and how they are broken and written. */
public final class WordRules {

  private static final List<Rule> ALL =
      List.of(
          new MixedDashes(),
          new LongBalloon(),
          new WordyStretch(),
          new PartedWords(),
          new WordyScreen(),
          new StressInCapitals());

  private WordRules() {}

  /** Every rule of this package. */
  public static List<Rule> all() {
    return ALL;
  }
}
