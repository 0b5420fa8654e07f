package io.github.readfall.job;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.job.polyglot.FitMatrix;
import java.util.ArrayList;
import java.util.List;

/**
 * An episode's translations set into its balloons.
 *
 * @param original the strip in its own language
 * @param matrix every cue against every language
 */
public record LanguagesProof(StripProof original, FitMatrix matrix) {

  /** All that was found in any language. */
  public List<Finding> findings() {
    return matrix.editions().stream().flatMap(edition -> edition.findings().stream()).toList();
  }

  /** All that was found, in the original and in any language. */
  public List<Finding> allFindings() {
    List<Finding> all = new ArrayList<>(original.findings());
    all.addAll(findings());
    return List.copyOf(all);
  }
}
