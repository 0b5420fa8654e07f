package io.github.readfall.rules.legible;

import static java.util.stream.Collectors.groupingBy;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Phrase;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.type.text.Coverage;
import io.github.readfall.type.text.PlacedRun;
import io.github.readfall.type.text.ScriptCode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Letters in another hand than the voice's own, because its face lacks them. Only letters of the
 * language's own script count: signs and words in another script are a guest in any face.
 */
final class FallbackLetters implements Rule {

  private static final int MOST_NAMED = 12;

  /** An extended grapheme cluster (UAX #29). */
  private static final Pattern LETTER = Pattern.compile("\\X");

  /** A letter set in another face than its voice's. */
  private record Guest(String letter, String family, SetBalloon balloon) {}

  @Override
  public RuleSpec spec() {
    return RuleSpec.FALLBACK;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    SetEpisode episode = galley.set();
    return episode.balloons().stream()
        .flatMap(FallbackLetters::guests)
        .collect(
            groupingBy(guest -> family(guest.balloon()), LinkedHashMap::new, Collectors.toList()))
        .entrySet()
        .stream()
        .map(entry -> finding(entry.getKey(), entry.getValue()));
  }

  private static Stream<Guest> guests(SetBalloon balloon) {
    return balloon.lines().stream()
        .flatMap(line -> line.line().runs().stream())
        .filter(run -> !family(run).equals(family(balloon)))
        .flatMap(run -> letters(run, balloon))
        .distinct();
  }

  private static Stream<Guest> letters(PlacedRun run, SetBalloon balloon) {
    return LETTER
        .matcher(run.text())
        .results()
        .map(MatchResult::group)
        .filter(letter -> !letter.codePoints().allMatch(Coverage::isInvisible))
        .filter(letter -> isOwnScript(letter, balloon))
        .map(letter -> new Guest(letter, family(run), balloon));
  }

  private static boolean isOwnScript(String letter, SetBalloon balloon) {
    return ScriptCode.of(letter, balloon.language()).equals(balloon.language().script());
  }

  private static String family(SetBalloon balloon) {
    return balloon.type().face().file().family();
  }

  private static String family(PlacedRun run) {
    return run.type().face().file().family();
  }

  private Finding finding(String voiceFamily, List<Guest> guests) {
    List<String> letters = guests.stream().map(Guest::letter).distinct().toList();
    List<String> families = guests.stream().map(Guest::family).distinct().toList();
    List<SetBalloon> balloons = guests.stream().map(Guest::balloon).distinct().toList();
    String message =
        voiceFamily
            + " lacks "
            + NumberText.list(letters, MOST_NAMED, letter -> letter)
            + ", first in "
            + BalloonFinding.name(balloons.get(0))
            + "; set in "
            + NumberText.list(families, MOST_NAMED, family -> family)
            + " instead.";
    Phrase advice =
        Phrase.of("See whether the two look well together; if not, choose a face in ")
            .houseStyle()
            .then(" that has these letters.");
    return BalloonFinding.of(balloons, RuleSpec.FALLBACK, Phrase.of(message), advice);
  }
}
