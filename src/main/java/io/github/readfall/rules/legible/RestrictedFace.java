package io.github.readfall.rules.legible;

import static java.util.stream.Collectors.groupingBy;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Phrase;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.type.font.Face;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A face whose file forbids to embed its outlines in a document (OpenType specification, OS/2,
 * fsType). The field is advice to programs: the licence decides.
 */
final class RestrictedFace implements Rule {

  private record Use(Face face, SetBalloon balloon) {}

  @Override
  public RuleSpec spec() {
    return RuleSpec.FACE_LICENCE;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    SetEpisode episode = galley.set();
    return episode.balloons().stream()
        .flatMap(RestrictedFace::uses)
        .filter(use -> !use.face().embedding().isAllowed())
        .collect(groupingBy(use -> use.face().file().id(), LinkedHashMap::new, Collectors.toList()))
        .entrySet()
        .stream()
        .map(entry -> finding(entry.getKey(), entry.getValue()));
  }

  private static Stream<Use> uses(SetBalloon balloon) {
    Map<String, Face> byFile = new LinkedHashMap<>();
    balloon.types().forEach(type -> byFile.putIfAbsent(type.face().file().id(), type.face()));
    return byFile.values().stream().map(face -> new Use(face, balloon));
  }

  private Finding finding(String file, List<Use> uses) {
    List<SetBalloon> balloons = uses.stream().map(Use::balloon).toList();
    String message =
        "The face "
            + file
            + ", used from "
            + BalloonFinding.name(balloons.get(0))
            + " on, says that it may not be embedded in a document.";
    Phrase advice =
        Phrase.of(
                "Read its licence, which decides, and keep to the law where you publish; or choose"
                    + " another face in ")
            .houseStyle()
            .then(".");
    return BalloonFinding.of(balloons, RuleSpec.FACE_LICENCE, Phrase.of(message), advice);
  }
}
