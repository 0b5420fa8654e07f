package io.github.readfall.rules.voice;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.script.CastMember;
import io.github.readfall.script.Letters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A speaker whose voice is not the same throughout a series: lettered differently in one episode
 * than in most, or under a name that is most likely a typo.
 */
final class StrayedVoice implements SeriesRule {

  private static final int MOST_NAMED = 3;

  /** The common traits of one speaker's balloons that strayed in one episode. */
  private record Stray(
      SeriesStrip strip, List<SetBalloon> balloons, Set<String> differences, SeriesStrip usual) {

    Stray and(List<SetBalloon> more, List<String> others) {
      List<SetBalloon> all = new ArrayList<>(balloons);
      all.addAll(more);
      all.sort(Comparator.comparingInt(balloon -> balloon.cue().line()));
      Set<String> both = new LinkedHashSet<>(differences);
      both.addAll(others);
      return new Stray(strip, all, both, usual);
    }
  }

  /** A speaker in an episode. */
  private record At(String path, String speaker) {}

  @Override
  public RuleSpec spec() {
    return RuleSpec.STRAYED;
  }

  @Override
  public Stream<Finding> check(List<SeriesStrip> strips) {
    return Stream.concat(
        strays(strips).stream().map(this::lettered),
        NamePair.of(strips).stream().flatMap(this::misspelt));
  }

  private static List<Stray> strays(List<SeriesStrip> strips) {
    Map<At, Stray> strays = new LinkedHashMap<>();
    for (SeriesVoice voice : SeriesVoice.of(strips)) {
      LetteringStyle usual = voice.usual();
      SeriesStrip home = voice.where(usual::equals).get(0).strip();
      for (SpeakerBalloons uses : voice.where(style -> !style.agreesWith(usual))) {
        LetteringStyle style = LetteringStyle.of(uses.balloons().get(0));
        At at = new At(uses.strip().path(), Letters.fold(uses.speaker()));
        Stray before = strays.getOrDefault(at, new Stray(uses.strip(), List.of(), Set.of(), home));
        strays.put(at, before.and(uses.balloons(), style.differencesFrom(usual)));
      }
    }
    return List.copyOf(strays.values());
  }

  private Finding lettered(Stray stray) {
    SpeakerBalloons uses = new SpeakerBalloons(stray.strip(), stray.balloons());
    String speaker = uses.speaker();
    List<String> differences = List.copyOf(stray.differences());
    String message =
        speaker
            + " is lettered in another way here than in "
            + stray.usual().name()
            + ": "
            + NumberText.list(differences, MOST_NAMED, difference -> difference)
            + ".";
    return uses.finding(RuleSpec.STRAYED, message, advice(stray, speaker))
        .measured(stray.balloons().size(), 0, RuleSpec.STRAYED.unit());
  }

  private static String advice(Stray stray, String speaker) {
    String here = voice(stray.strip(), speaker);
    String there = voice(stray.usual(), speaker);
    return here.equals(there)
        ? "Letter " + speaker + " alike in both."
        : "Give "
            + speaker
            + " one voice in the header Cast of every script: here it names "
            + here
            + ", in "
            + stray.usual().name()
            + " "
            + there
            + ".";
  }

  /** The voice that a Cast gives a speaker, as a sentence names it. */
  private static String voice(SeriesStrip strip, String speaker) {
    return strip.set().script().cast().stream()
        .filter(member -> Letters.fold(member.name()).equals(Letters.fold(speaker)))
        .map(CastMember::voice)
        .filter(voice -> !voice.isEmpty())
        .findFirst()
        .orElse("none");
  }

  /** One finding for each episode that has the odd name, unless its Cast lacks the name too. */
  private Stream<Finding> misspelt(NamePair pair) {
    return pair.odd().uses().stream()
        .filter(StrayedVoice::isNotYetFound)
        .map(uses -> misspelt(uses, pair.usual()));
  }

  /** A name that a given Cast lacks is script/unknown-speaker already. */
  private static boolean isNotYetFound(SpeakerBalloons uses) {
    List<CastMember> cast = uses.strip().set().script().cast();
    String speaker = Letters.fold(uses.speaker());
    return cast.isEmpty()
        || cast.stream().anyMatch(member -> Letters.fold(member.name()).equals(speaker));
  }

  private Finding misspelt(SpeakerBalloons uses, SeriesName usual) {
    String episodes = NumberText.list(usual.uses(), MOST_NAMED, other -> other.strip().name());
    String message =
        uses.speaker()
            + " speaks here, and "
            + usual.shown()
            + " in "
            + episodes
            + ": most likely one person, whose voice goes by one name.";
    String advice =
        "Write "
            + usual.shown()
            + " here; if they are two people, name both in the header Cast of one script.";
    return uses.finding(RuleSpec.STRAYED, message, advice)
        .measured(uses.balloons().size(), 0, RuleSpec.STRAYED.unit());
  }
}
