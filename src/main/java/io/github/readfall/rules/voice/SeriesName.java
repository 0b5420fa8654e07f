package io.github.readfall.rules.voice;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import io.github.readfall.script.CueKind;
import io.github.readfall.script.Letters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A speaker's name throughout a series.
 *
 * @param folded as names are compared
 * @param uses its balloons, in the order of the episodes; at least one
 */
record SeriesName(String folded, List<SpeakerBalloons> uses) {

  /**
   * A name that more episodes have is the one that is meant; of equals, the one with more to say.
   */
  static final Comparator<SeriesName> BY_USE =
      Comparator.comparingInt((SeriesName name) -> name.uses().size())
          .thenComparingInt(SeriesName::balloons);

  SeriesName {
    uses = List.copyOf(uses);
  }

  /** Every name with dialogue, in the order of first appearance. */
  static List<SeriesName> of(List<SeriesStrip> strips) {
    Map<String, List<SpeakerBalloons>> names = new LinkedHashMap<>();
    for (SeriesStrip strip : strips) {
      strip.set().balloons().stream()
          .filter(balloon -> balloon.cue().kind() == CueKind.DIALOGUE)
          .collect(
              groupingBy(
                  balloon -> Letters.fold(balloon.cue().speaker()), LinkedHashMap::new, toList()))
          .forEach(
              (name, balloons) ->
                  names
                      .computeIfAbsent(name, n -> new ArrayList<>())
                      .add(new SpeakerBalloons(strip, balloons)));
    }
    return names.entrySet().stream().map(e -> new SeriesName(e.getKey(), e.getValue())).toList();
  }

  /** The name as it is first written. */
  String shown() {
    return uses.get(0).speaker();
  }

  int balloons() {
    return uses.stream().mapToInt(h -> h.balloons().size()).sum();
  }

  boolean sharesAnEpisodeWith(SeriesName other) {
    return uses.stream()
        .anyMatch(
            mine ->
                other.uses.stream()
                    .anyMatch(its -> its.strip().path().equals(mine.strip().path())));
  }
}
