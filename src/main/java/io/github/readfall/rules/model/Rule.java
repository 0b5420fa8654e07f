package io.github.readfall.rules.model;

import io.github.readfall.base.finding.Finding;
import java.util.stream.Stream;

/** A rule about a strip. A rule about places finds nothing in balloons without a place. */
public interface Rule {

  /** Its id, severity, unit and limit. */
  RuleSpec spec();

  /** Every violation of the rule, in script order. */
  Stream<Finding> check(CheckedStrip strip);
}
