package io.github.readfall.window.model;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.style.Look;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.rules.RuleBook;
import io.github.readfall.script.Script;
import io.github.readfall.series.Episode;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.type.balloon.ShapeKind;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A balloon that shows a voice or a manner, set as on the strip.
 *
 * @param set an episode of that balloon
 * @param balloon the same
 * @param findings what the rules of reading find in it
 */
public record Specimen(SetEpisode set, SetBalloon balloon, List<Finding> findings) {

  public Specimen {
    findings = List.copyOf(findings);
  }

  /**
   * The balloon of a subject; empty where it has none, as the limit of a rule.
   *
   * @param like the episode it would stand in
   * @param sample what is said where nobody says anything
   */
  public static Optional<Specimen> of(
      StyleSubject subject, HouseStyle style, Episode like, String sample) {
    if (subject instanceof StyleSubject.Limit) {
      return Optional.empty();
    }
    Script script = new SpecimenCue(like.script(), sample).of(subject);
    SetEpisode set = new Typesetter(like.shelf(), like.lettered(style)).set(script);
    return set.balloons().stream()
        .findFirst()
        .map(balloon -> new Specimen(set, balloon, unread(set)));
  }

  /** What keeps letters from being read; all else hangs on the strip. */
  private static List<Finding> unread(SetEpisode set) {
    return RuleBook.check(Galley.unplaced(set)).stream()
        .filter(finding -> finding.rule().startsWith("legible/"))
        .toList();
  }

  /** How it is lettered. */
  public Look look() {
    return balloon.look();
  }

  /** By how much its letters stand out from it, 1 to 21; empty where nothing is round them. */
  public OptionalDouble contrast() {
    return look().shape() == ShapeKind.NONE
        ? OptionalDouble.empty()
        : OptionalDouble.of(look().text().contrastWith(look().fill()));
  }

  /** How high a character looks on the narrowest phone, in minutes of arc. */
  public double arcmin() {
    return set.phone().angleOf(balloon.characterPx(), set.style().strip().widthPx()).arcmin();
  }
}
