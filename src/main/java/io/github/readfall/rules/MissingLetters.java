package io.github.readfall.rules;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.strip.galley.Galley;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Letters that no face has: the reader would see an empty box. */
final class MissingLetters implements Rule {

  private static final int MOST_NAMED = 12;

  @Override
  public String id() {
    return "legible/glyph-missing";
  }

  @Override
  public Severity severity() {
    return Severity.ERROR;
  }

  @Override
  public Stream<Finding> check(Galley galley) {
    SetEpisode episode = galley.set();
    return episode.balloons().stream()
        .filter(balloon -> !balloon.missingLetters().isEmpty())
        .map(this::finding);
  }

  private Finding finding(SetBalloon balloon) {
    List<Integer> missing = balloon.missingLetters();
    String message =
        "In "
            + Fault.name(balloon)
            + " no face has "
            + NumberWords.list(missing, MOST_NAMED, MissingLetters::name)
            + ".";
    String advice =
        "Write it otherwise, or put a font that has all of the cue's letters into the series'"
            + " folder fonts and name it as the voice's face in series.toml.";
    return Fault.in(balloon, this, message, advice).measured(missing.size(), 0, "letters");
  }

  /** Its number (Unicode Standard, appendix A) and, where it can be shown, the letter itself. */
  private static String name(int letter) {
    String number = String.format(Locale.ROOT, "U+%04X", letter);
    return switch (Character.getType(letter)) {
      case Character.SURROGATE,
          Character.UNASSIGNED,
          Character.PRIVATE_USE,
          Character.CONTROL,
          Character.FORMAT ->
          number;
      case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK, Character.COMBINING_SPACING_MARK ->
          number + " \u25CC" + Character.toString(letter); // a mark needs a letter to stand on
      default -> number + " " + Character.toString(letter);
    };
  }
}
