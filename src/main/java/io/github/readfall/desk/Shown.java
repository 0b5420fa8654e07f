package io.github.readfall.desk;

import io.github.readfall.finding.Finding;
import io.github.readfall.galley.Galley;
import io.github.readfall.plan.EpisodePlan;
import io.github.readfall.series.Episode;
import java.util.List;

/**
 * An episode at one moment, and all that was worked out from it.
 *
 * @param text of its script
 * @param episode the same, read
 * @param galley its strip
 * @param plan how tall it is and how long it is read; while somebody types, that of a moment before
 * @param findings of the checks and of the plan; while somebody types, those of a moment before
 * @param isSettled whether the strip is placed and checked as it is now; if not, that is on its way
 */
public record Shown(
    String text,
    Episode episode,
    Galley galley,
    EpisodePlan plan,
    List<Finding> findings,
    boolean isSettled) {

  public Shown {
    findings = List.copyOf(findings);
  }

  /** Where everything in it lies. */
  public Links links() {
    return new Links(episode.script(), galley);
  }
}
