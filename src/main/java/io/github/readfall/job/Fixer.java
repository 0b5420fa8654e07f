package io.github.readfall.job;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Fix;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.series.Episode;
import io.github.readfall.strip.AppliedFix;
import io.github.readfall.strip.Layout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * Applies the fixes that findings offer, one after the other, and keeps each only if fewer findings
 * remain than before: a fix that makes something else worse is not safe.
 */
final class Fixer {

  /** Most fixes applied to a strip. House default, no source. */
  private static final int MOST = 500;

  private final BiFunction<Episode, Layout, StripProof> check;

  /** A fixer that checks an episode on another layout. */
  Fixer(BiFunction<Episode, Layout, StripProof> check) {
    this.check = check;
  }

  FixedProof fixed(StripProof start) {
    StripProof proof = start;
    List<Fix> made = new ArrayList<>();
    List<Fix> tried = new ArrayList<>();
    Optional<Fix> next = next(proof, tried);
    while (next.isPresent() && tried.size() < MOST) {
      Fix fix = next.get();
      tried.add(fix);
      StripProof after = check.apply(proof.episode(), AppliedFix.apply(proof.layout(), fix));
      if (isBetter(after, proof)) {
        made.add(fix);
        proof = after;
      }
      next = next(proof, tried);
    }
    return new FixedProof(proof, made);
  }

  private static Optional<Fix> next(StripProof proof, List<Fix> tried) {
    return proof.findings().stream()
        .filter(Finding::isOpen)
        .flatMap(finding -> finding.fix().stream())
        .filter(fix -> !tried.contains(fix))
        .findFirst();
  }

  private static boolean isBetter(StripProof after, StripProof before) {
    for (Severity severity : Severity.values()) {
      int now = Finding.countOpen(after.findings(), severity);
      int then = Finding.countOpen(before.findings(), severity);
      if (now != then) {
        return now < then;
      }
    }
    return false;
  }
}
