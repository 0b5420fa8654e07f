package io.github.readfall.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * What the other episodes of a series come to on average.
 *
 * @param episodes how many they are; positive
 * @param heightPx in strip pixels
 * @param words in an episode
 * @param seconds they are read
 */
public record SeriesAverage(int episodes, double heightPx, double words, double seconds) {

  /** Their average; empty where there are none. */
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
