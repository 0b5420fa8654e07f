package io.github.readfall.rules;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.strip.galley.Galley;
import java.util.stream.Stream;

/**
 * One thing that can be wrong with a strip. A rule about places finds nothing in what has none yet.
 */
public interface Rule {

  /** The name it is set and explained by, e.g. {@code words/long}. */
  String id();

  /** How grave it is, unless the person says otherwise. */
  Severity severity();

  /** Every such fault of a galley, in script order. */
  Stream<Finding> check(Galley galley);
}
