package io.github.readfall.rules.space;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.lettering.typeset.GivenFit;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.List;
import java.util.stream.Stream;

/**
 * Text without room: it leaves the outline that a layout gives it, or a word is wider than any
 * balloon on the strip and was broken where no language breaks it, so that no letter is lost.
 */
final class OversetText implements Rule {

  private static final int MOST_NAMED = 3;

  @Override
  public RuleSpec spec() {
    return RuleSpec.OVERFLOW;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    Stream<Finding> broken =
        galley.set().balloons().stream()
            .filter(balloon -> !balloon.brokenWords().isEmpty())
            .map(this::brokenWord);
    Stream<Finding> overset =
        galley.balloons().stream()
            .flatMap(
                balloon ->
                    balloon.set().given().stream()
                        .filter(given -> !given.fits() && given.clearPx() < 0)
                        .map(given -> overset(balloon, given, galley)));
    return Stream.concat(broken, overset);
  }

  private Finding brokenWord(SetBalloon balloon) {
    List<String> words = balloon.brokenWords();
    String message =
        "In "
            + BalloonFinding.name(balloon)
            + " "
            + NumberText.list(words, MOST_NAMED, word -> "\"" + shortened(word) + "\"")
            + " had to be broken, being wider than any balloon on the strip.";
    String advice =
        "Choose a shorter word, or say where it may part: a hyphen and a forced break, as in"
            + " \"lamp- / lighter\".";
    return BalloonFinding.of(balloon, RuleSpec.OVERFLOW, message, advice)
        .measured(words.size(), 0, "broken words");
  }

  private Finding overset(PlacedBalloon balloon, GivenFit given, Galley galley) {
    String message =
        BalloonFinding.name(balloon.set())
            + " does not go into its balloon: its text leaves the outline by "
            + NumberText.up(-given.clearPx(), 1)
            + " px.";
    String advice =
        NaturalSize.cut(balloon, given) + "make the balloon " + NaturalSize.grown(given) + ".";
    return NaturalSize.withFix(
            balloon,
            given,
            galley,
            BalloonFinding.of(balloon.set(), RuleSpec.OVERFLOW, message, advice))
        .measured(given.lettersTooMany(), 0, RuleSpec.OVERFLOW.unit());
  }

  private static String shortened(String word) {
    int most = 30;
    return word.codePointCount(0, word.length()) <= most
        ? word
        : word.substring(0, word.offsetByCodePoints(0, most)) + "…";
  }
}
