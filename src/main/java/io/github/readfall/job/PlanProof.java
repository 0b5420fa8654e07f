package io.github.readfall.job;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.plan.EpisodePlan;
import io.github.readfall.plan.SeriesAverage;
import java.util.List;
import java.util.Optional;

/**
 * An episode planned before it is drawn.
 *
 * @param fit its balloons, with all findings, the plan's last
 * @param plan its figures
 * @param others average of the other episodes of its series; empty if there are none
 */
public record PlanProof(FitProof fit, EpisodePlan plan, Optional<SeriesAverage> others) {

  /** All that was found. */
  public List<Finding> findings() {
    return fit.findings();
  }
}
