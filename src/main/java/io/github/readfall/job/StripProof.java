package io.github.readfall.job;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.job.polyglot.SharedBalloons;
import io.github.readfall.series.Episode;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.galley.Galley;
import java.util.List;

/**
 * An episode with every balloon in its place, and all findings.
 *
 * @param episode as read
 * @param galley the strip
 * @param layout the places of everything, as {@code place} writes them
 * @param findings of the files, of setting and placing, and of the rules, in that order
 * @param shared balloons whose size other languages decided too
 * @param timings of the stages
 */
public record StripProof(
    Episode episode,
    Galley galley,
    Layout layout,
    List<Finding> findings,
    SharedBalloons shared,
    Timings timings) {
  public StripProof {
    findings = List.copyOf(findings);
  }
}
