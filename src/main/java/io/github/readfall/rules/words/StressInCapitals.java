package io.github.readfall.rules.words;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.script.CastMember;
import io.github.readfall.script.CueText;
import io.github.readfall.script.Letters;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Words stressed by capitals in a voice that is lettered in capitals, where nobody sees it. */
final class StressInCapitals implements Rule {

  /** Three letters or more: shorter ones are mostly abbreviations. House default, no source. */
  private static final Pattern CAPITALS =
      Pattern.compile("(?<![\\p{L}\\p{N}.'’-])\\p{Lu}{3,}(?![\\p{L}\\p{N}'’-])");

  @Override
  public RuleSpec spec() {
    return RuleSpec.STRESS;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    SetEpisode episode = strip.galley().set();
    Set<String> names = names(episode);
    return episode.balloons().stream()
        .filter(SetBalloon::capitals)
        .flatMap(balloon -> finding(balloon, stressed(balloon.cue().text(), names)));
  }

  private static Set<String> names(SetEpisode episode) {
    return Stream.concat(
            episode.script().cast().stream().map(CastMember::name),
            episode.script().cues().stream().flatMap(cue -> cue.speakers().stream()))
        .flatMap(name -> Stream.of(name.split(" ", -1)))
        .map(Letters::fold)
        .collect(Collectors.toSet());
  }

  /** The words that stand out by their capitals; none if all are capitals. */
  private static List<String> stressed(CueText text, Set<String> names) {
    boolean mixed = text.plain().codePoints().anyMatch(Character::isLowerCase);
    return mixed
        ? CAPITALS
            .matcher(text.plain())
            .results()
            .filter(
                word ->
                    text.spans().stream()
                        .noneMatch(
                            span -> span.start() <= word.start() && word.start() < span.end()))
            .map(MatchResult::group)
            .filter(word -> !names.contains(Letters.fold(word)))
            .distinct()
            .toList()
        : List.of();
  }

  private static Stream<Finding> finding(SetBalloon balloon, List<String> words) {
    if (words.isEmpty()) {
      return Stream.empty();
    }
    String message =
        BalloonFinding.name(balloon)
            + " is lettered in capitals, so nobody sees the stress on "
            + String.join(", ", words)
            + ".";
    String advice =
        "Write "
            + words.stream().map(word -> "*" + word + "*").collect(Collectors.joining(", "))
            + " to letter it bold and slanted.";
    return Stream.of(
        BalloonFinding.of(balloon, RuleSpec.STRESS, message, advice)
            .measured(words.size(), 0, RuleSpec.STRESS.unit()));
  }
}
