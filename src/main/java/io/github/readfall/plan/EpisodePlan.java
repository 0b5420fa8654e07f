package io.github.readfall.plan;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.strip.Cuts;
import io.github.readfall.strip.Layout;
import java.util.List;
import java.util.Optional;

/**
 * What an episode comes to: how tall, how many screens, how long to read, where to cut and split.
 *
 * @param layout the panels it is reckoned from
 * @param met its words where they are to be expected, in script order
 * @param screens of the narrowest phone
 * @param panels in script order; those that have a place
 * @param cuts into canvas pages and slices
 * @param split where it is too tall, or where a split is asked for
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

  /** How long all words are read, in seconds; looking at the pictures is not reckoned. */
  public double seconds() {
    return met.stream().mapToDouble(ReadWords::seconds).sum();
  }
}
