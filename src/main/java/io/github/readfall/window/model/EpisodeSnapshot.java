package io.github.readfall.window.model;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.plan.EpisodePlan;
import io.github.readfall.series.Episode;
import io.github.readfall.strip.galley.Galley;
import java.util.List;

/**
 * An episode at one moment, and everything computed from it.
 *
 * @param text of its script
 * @param episode read from that text
 * @param galley its strip
 * @param plan its height and reading time; slightly out of date while the user types
 * @param findings of the checks and of the plan; slightly out of date while the user types
 * @param isSettled whether the strip is placed and checked; if not, that is under way
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

  /** The links between its script and its strip. */
  public ScriptStripLinks links() {
    return new ScriptStripLinks(episode.script(), galley);
  }
}
