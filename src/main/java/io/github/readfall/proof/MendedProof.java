package io.github.readfall.proof;

import io.github.readfall.finding.Mend;
import java.util.List;

/**
 * A strip after mending.
 *
 * @param proof as it is now
 * @param made the mends that were made, in order
 */
public record MendedProof(StripProof proof, List<Mend> made) {
  public MendedProof {
    made = List.copyOf(made);
  }
}
