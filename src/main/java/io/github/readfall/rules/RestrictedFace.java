package io.github.readfall.rules;

import static java.util.stream.Collectors.groupingBy;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.type.font.Face;
import io.github.readfall.type.text.SizedFace;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A face whose file forbids to embed its outlines in a document (OpenType specification, OS/2,
 * fsType). The field is advice to programs: the licence decides.
 */
final class RestrictedFace implements Rule {

  private record Use(Face face, SetBalloon balloon) {}

  @Override
  public String id() {
    return "legible/face-licence";
  }

  @Override
  public Severity severity() {
    return Severity.WARNING;
  }

  @Override
  public Stream<Finding> check(Galley galley) {
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
    return balloon.types().stream()
        .map(SizedFace::face)
        .distinct()
        .map(face -> new Use(face, balloon));
  }

  private Finding finding(String file, List<Use> uses) {
    List<SetBalloon> balloons = uses.stream().map(Use::balloon).toList();
    String message =
        "The face "
            + file
            + ", used from "
            + Fault.name(balloons.get(0))
            + " on, says that it may not be embedded in a document.";
    String advice =
        "Read its licence, which decides, and keep to the law where you publish; or choose another"
            + " face in series.toml.";
    return Fault.in(balloons, this, message, advice);
  }
}
