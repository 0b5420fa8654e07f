package io.github.readfall.rules.voice;

import static java.util.stream.Collectors.groupingBy;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Phrase;
import io.github.readfall.base.finding.Spelling;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.script.CastMember;
import io.github.readfall.script.CueKind;
import io.github.readfall.script.Letters;
import io.github.readfall.strip.galley.Galley;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A speaker without a voice in series.toml, which has others, if the script has no Cast: mostly a
 * typo. So is a voice that the Cast names and series.toml lacks. A speaker missing from a given
 * Cast is reported by the reader of the script.
 */
final class UnknownVoice implements Rule {

  @Override
  public RuleSpec spec() {
    return RuleSpec.UNKNOWN_VOICE;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
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
    return isStranger(speaker, episode)
        ? Stream.of(stranger(speaker, balloons, ownVoices(episode.style())))
        : Stream.empty();
  }

  /** Whom a given Cast lacks, the reader of the script has named already. */
  private static boolean isStranger(String speaker, SetEpisode episode) {
    HouseStyle style = episode.style();
    return episode.script().cast().isEmpty()
        && !ownVoices(style).isEmpty()
        && style.voice(speaker).isEmpty();
  }

  private static boolean lacksVoice(CastMember member, HouseStyle style) {
    return !member.voice().isEmpty()
        && !ownVoices(style).isEmpty()
        && style.voice(member.voice()).isEmpty();
  }

  private static List<String> ownVoices(HouseStyle style) {
    return style.voices().keySet().stream()
        .filter(name -> !Letters.fold(name).equals(HouseStyle.DEFAULT_VOICE))
        .toList();
  }

  private Finding stranger(String speaker, List<SetBalloon> balloons, List<String> voices) {
    Phrase message =
        Phrase.of(BalloonFinding.name(balloons.get(0)) + ": " + speaker + " has no voice in ")
            .houseStyle()
            .then(", which has others, so the default voice is used.");
    Phrase advice =
        Spelling.nearestName(speaker, voices, Letters::fold)
            .map(name -> Phrase.of("Did you mean " + name + "? If not, "))
            .orElse(Phrase.of("Add a voice of that name to ").houseStyle().then(", or "))
            .then("name who speaks in a header Cast.");
    return BalloonFinding.of(balloons, RuleSpec.UNKNOWN_VOICE, message, advice);
  }

  private Finding withoutVoice(CastMember member, List<SetBalloon> balloons, HouseStyle style) {
    String voice = member.voice();
    Phrase message =
        Phrase.of(BalloonFinding.name(balloons.get(0)))
            .then(": the Cast gives " + member.name() + " the voice " + voice + ", which ")
            .houseStyle()
            .then(" does not have, so the default voice is used.");
    Phrase advice =
        Spelling.nearestName(voice, ownVoices(style), Letters::fold)
            .map(name -> added("Did you mean " + name + "? If not, add it to ").then("."))
            .orElseGet(() -> added("Add it to ").then(", or correct it in the Cast."));
    return BalloonFinding.of(balloons, RuleSpec.UNKNOWN_VOICE, message, advice);
  }

  private static Phrase added(String add) {
    return Phrase.of(add).houseStyle().then(" as a voice");
  }
}
