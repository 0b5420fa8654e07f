package io.github.readfall.rules;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import java.util.List;
import java.util.stream.Stream;

/** One thing that can be wrong between the episodes of a series, which share a house style. */
public interface SeriesRule {

  /** The name it is set and explained by, e.g. {@code voice/strayed}. */
  String id();

  /** How grave it is, unless the person says otherwise. */
  Severity severity();

  /**
   * Every such fault of a series, episode by episode. Each names the file it is in.
   *
   * @param strips in the order they are read; at least one
   */
  Stream<Finding> check(List<SeriesStrip> strips);
}
