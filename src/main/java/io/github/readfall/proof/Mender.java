package io.github.readfall.proof;

import io.github.readfall.finding.Finding;
import io.github.readfall.finding.Mend;
import io.github.readfall.finding.Severity;
import io.github.readfall.series.Episode;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.Mending;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * Makes the mends that findings offer, one after the other, and keeps each only if less is found
 * after it than before: a mend that makes something else worse is not a safe one.
 */
final class Mender {

  /** A strip cannot be mended for ever. House default, no source. */
  private static final int MOST = 500;

  private final BiFunction<Episode, Layout, StripProof> check;

  /** Mends with what checks an episode on another layout. */
  Mender(BiFunction<Episode, Layout, StripProof> check) {
    this.check = check;
  }

  MendedProof mended(StripProof start) {
    StripProof proof = start;
    List<Mend> made = new ArrayList<>();
    List<Mend> tried = new ArrayList<>();
    Optional<Mend> next = next(proof, tried);
    while (next.isPresent() && tried.size() < MOST) {
      Mend mend = next.get();
      tried.add(mend);
      StripProof after = check.apply(proof.episode(), Mending.apply(proof.layout(), mend));
      if (isBetter(after, proof)) {
        made.add(mend);
        proof = after;
      }
      next = next(proof, tried);
    }
    return new MendedProof(proof, made);
  }

  private static Optional<Mend> next(StripProof proof, List<Mend> tried) {
    return proof.findings().stream()
        .filter(Finding::isOpen)
        .flatMap(finding -> finding.mend().stream())
        .filter(mend -> !tried.contains(mend))
        .findFirst();
  }

  private static boolean isBetter(StripProof after, StripProof before) {
    for (Severity severity : Severity.values()) {
      int now = severity.openIn(after.findings());
      int then = severity.openIn(before.findings());
      if (now != then) {
        return now < then;
      }
    }
    return false;
  }
}
