package io.github.readfall.series;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.languages.translate.Translation;
import java.util.List;

/**
 * A translation of an episode, and everything wrong with it.
 *
 * @param translation one cue for every cue of the script
 * @param findings in the order of reading
 */
public record ReadTranslation(Translation translation, List<Finding> findings) {

  public ReadTranslation {
    findings = List.copyOf(findings);
  }
}
