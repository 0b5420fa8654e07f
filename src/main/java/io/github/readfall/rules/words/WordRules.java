package io.github.readfall.rules.words;

import io.github.readfall.rules.model.Rule;
import java.util.List;

/** Lists the rules about numbers of words. */
public final class WordRules {

  private static final List<Rule> ALL =
      List.of(new LongBalloon(), new WordyStretch(), new WordyScreen());

  private WordRules() {}

  /** Every rule of this package. */
  public static List<Rule> all() {
    return ALL;
  }
}
