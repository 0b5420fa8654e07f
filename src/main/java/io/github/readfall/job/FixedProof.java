package io.github.readfall.job;

import io.github.readfall.base.finding.Fix;
import java.util.List;

/**
 * A strip after fixing.
 *
 * @param proof as it is now
 * @param made the fixes applied, in order
 */
public record FixedProof(StripProof proof, List<Fix> made) {
  public FixedProof {
    made = List.copyOf(made);
  }
}
