package io.github.readfall.rules.words;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Lines that end inside a name, between a number and what it counts, or elsewhere where no line
 * should, since no better break fits the balloon. Lettering that exists is left alone.
 */
final class PartedWords implements Rule {

  private static final int SHOWN = 3;
  private static final int SHOWN_LETTERS = 24;

  @Override
  public RuleSpec spec() {
    return RuleSpec.PARTED;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    return strip.galley().set().balloons().stream()
        .filter(balloon -> !balloon.wanted().isLettered())
        .filter(balloon -> !balloon.partedAfter().isEmpty() && balloon.brokenWords().isEmpty())
        .map(this::finding);
  }

  private Finding finding(SetBalloon balloon) {
    String breaks =
        balloon.partedAfter().stream()
            .limit(SHOWN)
            .map(
                line ->
                    "“" + lastWord(balloon, line) + "” and “" + firstWord(balloon, line + 1) + "”")
            .collect(Collectors.joining(", "));
    String message =
        "No good line break was found for "
            + BalloonFinding.name(balloon)
            + ": a line ends between "
            + breaks
            + ".";
    String advice =
        "Break it yourself with a slash between spaces, reword it, or give it a larger balloon.";
    return BalloonFinding.of(balloon, RuleSpec.PARTED, message, advice)
        .measured(balloon.partedAfter().size(), 0, RuleSpec.PARTED.unit());
  }

  private static String lastWord(SetBalloon balloon, int line) {
    String text = text(balloon, line);
    String word = text.substring(text.lastIndexOf(' ') + 1);
    return word.length() <= SHOWN_LETTERS
        ? word
        : "…" + word.substring(word.length() - SHOWN_LETTERS);
  }

  private static String firstWord(SetBalloon balloon, int line) {
    String text = text(balloon, line);
    int end = text.indexOf(' ');
    String word = end < 0 ? text : text.substring(0, end);
    return word.length() <= SHOWN_LETTERS ? word : word.substring(0, SHOWN_LETTERS) + "…";
  }

  private static String text(SetBalloon balloon, int line) {
    return balloon.lines().get(line).line().text();
  }
}
