package io.github.readfall.job;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.job.polyglot.SharedBalloons;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.series.Episode;
import java.util.ArrayList;
import java.util.List;

/**
 * An episode with every balloon set, and all that was found.
 *
 * @param episode as read
 * @param set its balloons
 * @param findings of the files, of setting, and of the rules, in that order
 * @param shared those whose size other languages decide too
 * @param timings of the stages
 */
public record FitProof(
    Episode episode,
    SetEpisode set,
    List<Finding> findings,
    SharedBalloons shared,
    Timings timings) {
  public FitProof {
    findings = List.copyOf(findings);
  }

  /** The same with more findings and other timings. */
  FitProof with(List<Finding> more, Timings others) {
    List<Finding> all = new ArrayList<>(findings);
    all.addAll(more);
    return new FitProof(episode, set, all, shared, others);
  }
}
