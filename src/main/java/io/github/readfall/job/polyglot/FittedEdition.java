package io.github.readfall.job.polyglot;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.strip.galley.Galley;
import java.util.List;
import java.util.Optional;

/**
 * An edition set into the outlines of the strip it translates.
 *
 * @param edition its words
 * @param cues every translated cue that has an outline, in script order, with those that have a
 *     stand-in
 * @param galley its strip
 * @param findings in its file, then about its lettering
 */
public record FittedEdition(
    Edition edition, List<FittedCue> cues, Galley galley, List<Finding> findings) {

  public FittedEdition {
    cues = List.copyOf(cues);
    findings = List.copyOf(findings);
  }

  /** The cue with this id, if it has an outline. */
  public Optional<FittedCue> cue(String id) {
    return cues.stream().filter(cue -> cue.id().equals(id)).findFirst();
  }

  /** The number of cues with a verdict. */
  public long count(Verdict verdict) {
    return cues.stream().filter(cue -> cue.verdict() == verdict).count();
  }
}
