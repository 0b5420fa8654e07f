package io.github.readfall.rules;

import static java.util.stream.Collectors.groupingBy;

import io.github.readfall.finding.Finding;
import io.github.readfall.finding.Severity;
import io.github.readfall.galley.Galley;
import io.github.readfall.script.CastMember;
import io.github.readfall.script.CueKind;
import io.github.readfall.script.Letters;
import io.github.readfall.script.NearestName;
import io.github.readfall.style.HouseStyle;
import io.github.readfall.typeset.SetBalloon;
import io.github.readfall.typeset.SetEpisode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A speaker whom neither the Cast nor a voice in series.toml knows, though either is given: mostly
 * a slip of the pen. So is a voice that the Cast names and series.toml, which has others, does not
 * have.
 */
final class UnknownVoice implements Rule {

  @Override
  public String id() {
    return "voice/unknown";
  }

  @Override
  public Severity severity() {
    return Severity.NOTE;
  }

  @Override
  public Stream<Finding> check(Galley galley) {
    SetEpisode episode = galley.set();
    return episode.balloons().stream()
        .filter(balloon -> balloon.cue().kind() == CueKind.DIALOGUE)
        .collect(
            groupingBy(balloon -> balloon.cue().speaker(), LinkedHashMap::new, Collectors.toList()))
        .entrySet()
        .stream()
        .flatMap(speaker -> check(speaker.getKey(), speaker.getValue(), episode));
  }

  private Stream<Finding> check(String speaker, List<SetBalloon> balloons, SetEpisode episode) {
    Optional<CastMember> member =
        episode.script().cast().stream()
            .filter(known -> Letters.fold(known.name()).equals(Letters.fold(speaker)))
            .findFirst();
    if (member.isPresent()) {
      return lacksVoice(member.get(), episode.style())
          ? Stream.of(withoutVoice(member.get(), balloons, episode.style()))
          : Stream.empty();
    }
    boolean known = episode.style().voice(speaker).isPresent() || names(episode).isEmpty();
    return known ? Stream.empty() : Stream.of(stranger(speaker, balloons, episode));
  }

  private static boolean lacksVoice(CastMember member, HouseStyle style) {
    return !member.voice().isEmpty()
        && !ownVoices(style).isEmpty()
        && style.voice(member.voice()).isEmpty();
  }

  private static List<String> names(SetEpisode episode) {
    return Stream.concat(
            episode.script().cast().stream().map(CastMember::name),
            ownVoices(episode.style()).stream())
        .toList();
  }

  private static List<String> ownVoices(HouseStyle style) {
    return style.voices().keySet().stream()
        .filter(name -> !Letters.fold(name).equals(HouseStyle.DEFAULT_VOICE))
        .toList();
  }

  private Finding stranger(String speaker, List<SetBalloon> balloons, SetEpisode episode) {
    String message =
        Fault.name(balloons.get(0))
            + ": "
            + speaker
            + " is not in the Cast and has no voice in series.toml, so the default voice is used.";
    String advice =
        NearestName.of(speaker, names(episode))
            .map(name -> "Did you mean " + name + "? If not, add " + speaker + " to the Cast.")
            .orElse(
                "Add "
                    + speaker
                    + " to the header Cast of the script, or a voice of that name to series.toml.");
    return Fault.in(balloons, this, message, advice);
  }

  private Finding withoutVoice(CastMember member, List<SetBalloon> balloons, HouseStyle style) {
    String voice = member.voice();
    String message =
        Fault.name(balloons.get(0))
            + ": the Cast gives "
            + member.name()
            + " the voice "
            + voice
            + ", which series.toml does not have, so the default voice is used.";
    String advice =
        NearestName.of(voice, ownVoices(style))
            .map(name -> "Did you mean " + name + "? If not, add it to series.toml as a voice.")
            .orElse("Add it to series.toml as a voice, or correct it in the Cast.");
    return Fault.in(balloons, this, message, advice);
  }
}
