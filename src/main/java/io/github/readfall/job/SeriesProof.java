package io.github.readfall.job;

import io.github.readfall.base.finding.Finding;
import java.util.List;
import java.util.stream.Stream;

/**
 * Every episode of a series, checked.
 *
 * @param episodes in the order of their folders
 * @param findings of the series as a whole
 */
public record SeriesProof(List<StripProof> episodes, List<Finding> findings) {
  public SeriesProof {
    episodes = List.copyOf(episodes);
    findings = List.copyOf(findings);
  }

  /** All that was found, in the episodes and between them. */
  public List<Finding> allFindings() {
    return Stream.concat(
            episodes.stream().flatMap(episode -> episode.findings().stream()), findings.stream())
        .toList();
  }
}
