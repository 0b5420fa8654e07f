package io.github.readfall.rules;

import io.github.readfall.finding.Finding;
import io.github.readfall.typeset.SetEpisode;
import java.util.List;

/** placeholder. */
public final class RuleBook {
  private RuleBook() {}

  /** placeholder. */
  public static List<Finding> check(SetEpisode e) {
    return List.of();
  }
}
