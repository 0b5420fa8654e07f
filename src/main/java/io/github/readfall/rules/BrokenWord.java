package io.github.readfall.rules;

import io.github.readfall.finding.Finding;
import io.github.readfall.finding.Severity;
import io.github.readfall.galley.Galley;
import io.github.readfall.typeset.SetBalloon;
import io.github.readfall.typeset.SetEpisode;
import java.util.List;
import java.util.stream.Stream;

/**
 * A word wider than any balloon on the strip: it was broken where no language breaks it, so that no
 * letter is lost.
 */
final class BrokenWord implements Rule {

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
    SetEpisode episode = galley.set();
    return episode.balloons().stream()
        .filter(balloon -> !balloon.brokenWords().isEmpty())
        .map(this::finding);
  }

  private Finding finding(SetBalloon balloon) {
    List<String> words = balloon.brokenWords();
    String message =
        "In "
            + Fault.name(balloon)
            + " "
            + Figures.list(words, MOST_NAMED, word -> "\"" + shortened(word) + "\"")
            + " had to be broken, being wider than any balloon on the strip.";
    String advice =
        "Choose a shorter word, or say where it may part: a hyphen and a forced break, as in"
            + " \"lamp- / lighter\".";
    return Fault.in(balloon, this, message, advice).measured(words.size(), 0, "broken words");
  }

  private static String shortened(String word) {
    int most = 30;
    return word.codePointCount(0, word.length()) <= most
        ? word
        : word.substring(0, word.offsetByCodePoints(0, most)) + "…";
  }
}
