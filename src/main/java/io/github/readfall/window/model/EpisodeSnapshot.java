package io.github.readfall.window.model;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.plan.EpisodePlan;
import io.github.readfall.series.Episode;
import io.github.readfall.strip.galley.Galley;
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
public record EpisodeSnapshot(
    String text,
    Episode episode,
    Galley galley,
    EpisodePlan plan,
    List<Finding> findings,
    boolean isSettled) {

  public EpisodeSnapshot {
    findings = List.copyOf(findings);
  }

  /** Where everything in it lies. */
  public ScriptStripLinks links() {
    return new ScriptStripLinks(episode.script(), galley);
  }
}
