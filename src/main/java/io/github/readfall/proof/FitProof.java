package io.github.readfall.proof;

import io.github.readfall.finding.Finding;
import io.github.readfall.series.Episode;
import io.github.readfall.typeset.SetEpisode;
import java.util.List;

/**
 * An episode with every balloon set, and all that was found.
 *
 * @param episode as read
 * @param set its balloons
 * @param findings of the files, of setting, and of the rules, in that order
 * @param timings of the stages
 */
public record FitProof(Episode episode, SetEpisode set, List<Finding> findings, Timings timings) {
  public FitProof {
    findings = List.copyOf(findings);
  }
}
