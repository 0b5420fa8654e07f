package io.github.readfall.rules.voice;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.script.CueKind;
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
 * @param uses its balloons, in the order of the episodes; at least one
 */
record SeriesVoice(List<SpeakerBalloons> uses) {

  SeriesVoice {
    uses = List.copyOf(uses);
  }

  /** Every voice of a series but sound effects, which look as they sound. */
  static List<SeriesVoice> of(List<SeriesStrip> strips) {
    Map<VoiceKey, List<SpeakerBalloons>> voices = new LinkedHashMap<>();
    for (SeriesStrip strip : strips) {
      strip.set().balloons().stream()
          .filter(balloon -> balloon.cue().kind() != CueKind.EFFECT)
          .collect(groupingBy(VoiceKey::of, LinkedHashMap::new, toList()))
          .forEach(
              (spoken, balloons) ->
                  voices
                      .computeIfAbsent(spoken, s -> new ArrayList<>())
                      .add(new SpeakerBalloons(strip, balloons)));
    }
    return voices.values().stream().map(SeriesVoice::new).toList();
  }

  /** The lettering style of most episodes; of equally many, the first. */
  LetteringStyle usual() {
    Set<LetteringStyle> styles = new LinkedHashSet<>();
    uses.forEach(h -> h.balloons().forEach(balloon -> styles.add(LetteringStyle.of(balloon))));
    LetteringStyle usual = styles.iterator().next();
    for (LetteringStyle style : styles) {
      usual = episodesIn(style) > episodesIn(usual) ? style : usual;
    }
    return usual;
  }

  private long episodesIn(LetteringStyle style) {
    return uses.stream()
        .filter(h -> h.balloons().stream().map(LetteringStyle::of).anyMatch(style::agreesWith))
        .count();
  }

  /** The balloons with the wanted lettering style, if there are any. */
  List<SpeakerBalloons> where(Predicate<LetteringStyle> wanted) {
    List<SpeakerBalloons> found = new ArrayList<>();
    for (SpeakerBalloons h : uses) {
      List<SetBalloon> balloons =
          h.balloons().stream().filter(balloon -> wanted.test(LetteringStyle.of(balloon))).toList();
      if (!balloons.isEmpty()) {
        found.add(new SpeakerBalloons(h.strip(), balloons));
      }
    }
    return found;
  }
}
