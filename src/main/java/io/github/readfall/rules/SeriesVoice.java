package io.github.readfall.rules;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import io.github.readfall.script.CueKind;
import io.github.readfall.typeset.SetBalloon;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * One speaker in one manner, throughout a series.
 *
 * @param heard where, in the order of the episodes; at least one
 */
record SeriesVoice(List<Heard> heard) {

  SeriesVoice {
    heard = List.copyOf(heard);
  }

  /** Every voice of a series but sound effects, which look as they sound. */
  static List<SeriesVoice> of(List<SeriesStrip> strips) {
    Map<Spoken, List<Heard>> voices = new LinkedHashMap<>();
    for (SeriesStrip strip : strips) {
      strip.set().balloons().stream()
          .filter(balloon -> balloon.cue().kind() != CueKind.EFFECT)
          .collect(groupingBy(Spoken::of, LinkedHashMap::new, toList()))
          .forEach(
              (spoken, balloons) ->
                  voices
                      .computeIfAbsent(spoken, s -> new ArrayList<>())
                      .add(new Heard(strip, balloons)));
    }
    return voices.values().stream().map(SeriesVoice::new).toList();
  }

  /** The hand of most episodes; of equally many, the one that is met first. */
  Hand usual() {
    Set<Hand> hands = new LinkedHashSet<>();
    heard.forEach(h -> h.balloons().forEach(balloon -> hands.add(Hand.of(balloon))));
    Hand usual = hands.iterator().next();
    for (Hand hand : hands) {
      usual = episodesIn(hand) > episodesIn(usual) ? hand : usual;
    }
    return usual;
  }

  private long episodesIn(Hand hand) {
    return heard.stream()
        .filter(h -> h.balloons().stream().map(Hand::of).anyMatch(hand::agreesWith))
        .count();
  }

  /** The balloons whose hand is as wanted, where there are any. */
  List<Heard> where(Predicate<Hand> wanted) {
    List<Heard> found = new ArrayList<>();
    for (Heard h : heard) {
      List<SetBalloon> balloons =
          h.balloons().stream().filter(balloon -> wanted.test(Hand.of(balloon))).toList();
      if (!balloons.isEmpty()) {
        found.add(new Heard(h.strip(), balloons));
      }
    }
    return found;
  }
}
