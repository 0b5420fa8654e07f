package io.github.readfall.rules;

import io.github.readfall.finding.Finding;
import io.github.readfall.finding.Severity;
import io.github.readfall.typeset.SetEpisode;
import java.util.stream.Stream;

/** One thing that can be wrong with lettering, judged before a balloon has a place. */
public interface Rule {

  /** The name it is set and explained by, e.g. {@code words/long}. */
  String id();

  /** How grave it is, unless the person says otherwise. */
  Severity severity();

  /** Every such fault of an episode, in script order. */
  Stream<Finding> check(SetEpisode episode);
}
