package io.github.readfall.proof;

import io.github.readfall.finding.Finding;
import io.github.readfall.polyglot.FitMatrix;
import io.github.readfall.polyglot.FittedEdition;
import java.util.ArrayList;
import java.util.List;

/**
 * An episode's translations set into its balloons.
 *
 * @param original the strip in its own language
 * @param matrix every cue against every language
 * @param reading what was found in the files of the translations, by language in the order of the
 *     matrix
 */
public record LanguagesProof(StripProof original, FitMatrix matrix, List<List<Finding>> reading) {

  public LanguagesProof {
    reading = reading.stream().map(List::copyOf).toList();
  }

  /** All that was found in one language: in its file, then on its strip. */
  public List<Finding> findings(int edition) {
    FittedEdition fitted = matrix.editions().get(edition);
    List<Finding> findings = new ArrayList<>(reading.get(edition));
    findings.addAll(fitted.findings());
    return findings;
  }

  /** All that was found in any language. */
  public List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < matrix.editions().size(); i++) {
      findings.addAll(findings(i));
    }
    return findings;
  }
}
