package io.github.readfall.plan;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.strip.Cuts;
import io.github.readfall.strip.Layout;
import java.util.List;
import java.util.Optional;

/**
 * The plan of an episode: how tall it is, how many screens, how long to read, where to cut and
 * split it.
 *
 * @param layout the panels it is computed from
 * @param met its words at their expected places, in script order
 * @param screens of the narrowest phone
 * @param panels in script order; those that have a place
 * @param cuts into canvas pages and slices
 * @param split if it is too tall, or if a split is asked for
 * @param findings what is wrong with it
 */
public record EpisodePlan(
    Layout layout,
    List<ReadWords> met,
    Screens screens,
    List<PanelPace> panels,
    Cuts cuts,
    Optional<Split> split,
    List<Finding> findings) {

  public EpisodePlan {
    met = List.copyOf(met);
    panels = List.copyOf(panels);
    findings = List.copyOf(findings);
  }

  public double heightPx() {
    return layout.heightPx();
  }

  /** Words in the whole episode. */
  public int words() {
    return met.stream().mapToInt(ReadWords::words).sum();
  }

  /** The time to read all words, in seconds, without the time to look at the pictures. */
  public double seconds() {
    return met.stream().mapToDouble(ReadWords::seconds).sum();
  }
}
