package io.github.readfall.job.polyglot;

import io.github.readfall.script.Cue;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Every cue of an episode against every language.
 *
 * @param cues that have an outline in the original, in script order
 * @param editions the columns
 */
public record FitMatrix(List<Cue> cues, List<FittedEdition> editions) {

  public FitMatrix {
    cues = List.copyOf(cues);
    editions = List.copyOf(editions);
  }

  /** The matrix of some editions of a script. */
  public static FitMatrix of(List<Cue> script, List<FittedEdition> editions) {
    Set<String> outlined =
        editions.stream()
            .flatMap(edition -> edition.galley().set().balloons().stream())
            .map(balloon -> balloon.cue().id())
            .collect(Collectors.toSet());
    return new FitMatrix(
        script.stream().filter(cue -> outlined.contains(cue.id())).toList(), editions);
  }
}
