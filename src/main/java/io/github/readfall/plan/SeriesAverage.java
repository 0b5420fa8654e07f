package io.github.readfall.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The average of the other episodes of a series.
 *
 * @param episodes their number; positive
 * @param heightPx in strip pixels
 * @param words in an episode
 * @param seconds needed to read them
 */
public record SeriesAverage(int episodes, double heightPx, double words, double seconds) {

  /** The average of some plans; empty if there are none. */
  public static Optional<SeriesAverage> of(List<EpisodePlan> plans) {
    return plans.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new SeriesAverage(
                plans.size(),
                mean(plans, EpisodePlan::heightPx),
                mean(plans, EpisodePlan::words),
                mean(plans, EpisodePlan::seconds)));
  }

  private static double mean(List<EpisodePlan> plans, ToDoubleFunction<EpisodePlan> measure) {
    return plans.stream().mapToDouble(measure).average().orElseThrow();
  }
}
