package io.github.readfall.rules.legible;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toList;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.type.text.PlacedRun;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Letters that the face draws in another way for the cue's language, which are not used here. */
final class LocalLetters implements Rule {

  @Override
  public RuleSpec spec() {
    return RuleSpec.LOCAL_FORMS;
  }

  /** Letters of one face in one balloon. */
  private record Place(String face, Set<String> letters, SetBalloon balloon) {}

  /** One finding for each face: it is the face and the language that do not go together. */
  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    SetEpisode episode = galley.set();
    return episode.balloons().stream()
        .flatMap(LocalLetters::places)
        .collect(groupingBy(Place::face, TreeMap::new, toList()))
        .entrySet()
        .stream()
        .map(face -> finding(face.getKey(), face.getValue()));
  }

  private static Stream<Place> places(SetBalloon balloon) {
    String language = balloon.language().locale().getLanguage();
    return balloon.lines().stream()
        .flatMap(line -> line.line().runs().stream())
        .map(run -> new Place(run.type().face().file().family(), local(run, language), balloon))
        .filter(place -> !place.letters().isEmpty());
  }

  private static Set<String> local(PlacedRun run, String language) {
    Set<String> letters = new TreeSet<>();
    for (int i = 0; i < run.glyphs().size(); i++) {
      if (run.type().face().hasLocalForm(run.glyphs().glyph(i), language)) {
        letters.add(Character.toString(run.text().codePointAt(run.glyphs().charIndex(i))));
      }
    }
    return letters;
  }

  private Finding finding(String face, List<Place> places) {
    String letters =
        places.stream()
            .flatMap(place -> place.letters().stream())
            .distinct()
            .sorted()
            .collect(joining(", "));
    List<SetBalloon> balloons = places.stream().map(Place::balloon).distinct().toList();
    String message =
        face
            + " has forms of its own for this language of "
            + letters
            + ", first in "
            + BalloonFinding.name(balloons.get(0))
            + "; they are not used.";
    String advice =
        "Look at these letters: mostly the usual forms do as well; if not, choose another face.";
    return BalloonFinding.of(balloons, RuleSpec.LOCAL_FORMS, message, advice);
  }
}
