package io.github.readfall.rules.voice;

import io.github.readfall.rules.model.Rule;
import java.util.List;

/** Lists the rules about voices within one episode. */
public final class VoiceRules {

  private static final List<Rule> ALL = List.of(new UnknownVoice());

  private VoiceRules() {}

  /** Every rule of this package. */
  public static List<Rule> all() {
    return ALL;
  }
}
