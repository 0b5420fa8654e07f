package io.github.readfall.rules.legible;

import io.github.readfall.rules.model.Rule;
import java.util.List;

/** Lists the rules about legibility. */
public final class LegibleRules {

  private static final List<Rule> ALL =
      List.of(
          new PoorContrast(),
          new RestrictedFace(),
          new FallbackLetters(),
          new MissingLetters(),
          new TightLeading(),
          new LocalLetters(),
          new SmallType(),
          new SmallVoice());

  private LegibleRules() {}

  /** Every rule of this package. */
  public static List<Rule> all() {
    return ALL;
  }
}
