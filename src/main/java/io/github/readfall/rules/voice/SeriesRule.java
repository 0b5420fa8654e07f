package io.github.readfall.rules.voice;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.rules.model.RuleSpec;
import java.util.List;
import java.util.stream.Stream;

/** A rule about the episodes of a series, which share a house style. */
public interface SeriesRule {

  /** Its id, severity, unit and limit. */
  RuleSpec spec();

  /**
   * Every violation of the rule, episode by episode. Each finding names its file.
   *
   * @param strips in reading order; at least one
   */
  Stream<Finding> check(List<SeriesStrip> strips);
}
