package io.github.readfall.rules.legible;

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
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Letters that no face has: the reader would see an empty box. */
final class MissingLetters implements Rule {

  private static final int MOST_NAMED = 12;

  @Override
  public RuleSpec spec() {
    return RuleSpec.GLYPH_MISSING;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    SetEpisode episode = galley.set();
    return episode.balloons().stream()
        .filter(balloon -> !balloon.missingLetters().isEmpty())
        .map(this::finding);
  }

  private Finding finding(SetBalloon balloon) {
    List<Integer> missing = balloon.missingLetters();
    String message =
        "In "
            + BalloonFinding.name(balloon)
            + " no face has "
            + NumberText.list(missing, MOST_NAMED, MissingLetters::name)
            + ".";
    Phrase advice =
        Phrase.of(
                "Write it otherwise, or put a font that has all of the cue's letters into the"
                    + " series' folder fonts and name it as the voice's face in ")
            .houseStyle()
            .then(".");
    return BalloonFinding.of(balloon, RuleSpec.GLYPH_MISSING, Phrase.of(message), advice)
        .measured(missing.size(), 0, RuleSpec.GLYPH_MISSING.unit());
  }

  /** Its number (Unicode Standard, appendix A) and, if it can be shown, the letter itself. */
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
          number + " \u25CC" + Character.toString(letter); // a combining mark needs a letter
      default -> number + " " + Character.toString(letter);
    };
  }
}
