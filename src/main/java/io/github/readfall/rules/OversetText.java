package io.github.readfall.rules;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.lettering.typeset.GivenFit;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.List;
import java.util.stream.Stream;

/**
 * Text that has no room: it leaves the outline that a layout gives it, or a word is wider than any
 * balloon on the strip and was broken where no language breaks it, so that no letter is lost.
 */
final class OversetText implements Rule {

  private static final int MOST_NAMED = 3;

  @Override
  public String id() {
    return "space/overflow";
  }

  @Override
  public Severity severity() {
    return Severity.ERROR;
  }

  @Override
  public Stream<Finding> check(Galley galley) {
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
            + Fault.name(balloon)
            + " "
            + NumberWords.list(words, MOST_NAMED, word -> "\"" + shortened(word) + "\"")
            + " had to be broken, being wider than any balloon on the strip.";
    String advice =
        "Choose a shorter word, or say where it may part: a hyphen and a forced break, as in"
            + " \"lamp- / lighter\".";
    return Fault.in(balloon, this, message, advice).measured(words.size(), 0, "broken words");
  }

  private Finding overset(PlacedBalloon balloon, GivenFit given, Galley galley) {
    String message =
        Fault.name(balloon.set())
            + " does not go into its balloon: its text leaves the outline by "
            + NumberWords.up(-given.clearPx(), 1)
            + " px.";
    String advice = OwnSize.cut(balloon, given) + "make the balloon " + OwnSize.grown(given) + ".";
    return OwnSize.mended(balloon, given, galley, Fault.in(balloon.set(), this, message, advice))
        .measured(given.lettersTooMany(), 0, "letters too many");
  }

  private static String shortened(String word) {
    int most = 30;
    return word.codePointCount(0, word.length()) <= most
        ? word
        : word.substring(0, word.offsetByCodePoints(0, most)) + "…";
  }
}
