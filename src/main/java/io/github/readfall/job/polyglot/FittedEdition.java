package io.github.readfall.job.polyglot;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.strip.galley.Galley;
import java.util.List;
import java.util.Optional;

/**
 * An edition set into the outlines of the strip it translates.
 *
 * @param edition what it says
 * @param cues every translated cue that has an outline to go into, in script order; with those that
 *     a stand-in speaks for
 * @param galley its strip
 * @param findings in its file, then about its lettering
 */
public record FittedEdition(
    Edition edition, List<FittedCue> cues, Galley galley, List<Finding> findings) {

  public FittedEdition {
    cues = List.copyOf(cues);
    findings = List.copyOf(findings);
  }

  /** The cue with this id, if it has an outline to go into. */
  public Optional<FittedCue> cue(String id) {
    return cues.stream().filter(cue -> cue.id().equals(id)).findFirst();
  }

  /** How many cues need one thing. */
  public long count(Verdict verdict) {
    return cues.stream().filter(cue -> cue.verdict() == verdict).count();
  }
}
